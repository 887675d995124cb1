#include "report/learnt_json.h"

namespace baitwright {

void add_learnt(const LearntUsed& learnt, Json& json) {
    if (!learnt.anything()) return;
    Json bags = Json::array();
    for (const LearntBag& bag : learnt.bags) bags.push_back({{"name", bag.name}, {"mixes", bag.mixes}});
    json["learnt"] = {{"bags", bags},
                      {"hand", learnt.hand},
                      {"cups_weighed", learnt.cups_weighed},
                      {"holds_seen", learnt.holds_seen},
                      {"carpets_seen", learnt.carpets_seen}};
}

}  // namespace baitwright
