#pragma once

#include "bait/usual.h"
#include "report/reply.h"

namespace baitwright {

/// What a person always uses, all of it.
Reply usual_reply(Usual usual);

/// "Your usual: 80 ml pump, 1 l vessel." of what an answer used.
std::string usual_used_text(const Usual& used);

}  // namespace baitwright
