#pragma once

#include "bait/resolved_mix.h"
#include "bait/wetted_mix.h"

/// One draw of a solid's body from the spreads of its ingredient, by independent standard normals.
namespace baitwright {

/// What a draw of a solid's body starts from: the values and their spreads as sigmas of a log-normal.
class DoubtfulBody {
public:
    explicit DoubtfulBody(const Ingredient& ingredient);

    /// Loose and envelope density and size of its own, from three normals; its marks stay as they are.
    void draw(SolidNumbers& solid, const double* normals) const;
    friend bool operator==(const DoubtfulBody&, const DoubtfulBody&) = default;

private:
    Density loose_, envelope_;
    Length size_;
    double sigma_loose_, sigma_envelope_, sigma_size_;
};

/// Of every solid of the mix, in their order.
std::vector<DoubtfulBody> doubtful_bodies(const ResolvedMix& mix);

}  // namespace baitwright
