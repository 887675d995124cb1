#include "page/home_icon.h"

#include <array>
#include <cmath>

#include "page/png.h"

namespace baitwright {

namespace {

constexpr Pixel paper{246, 244, 236}, ink{23, 32, 29}, red{156, 31, 18};
constexpr int samples = 4;  ///< each way within a pixel

/// A place in the picture, 0 to 1 from the left and from the top.
struct IconPlace {
    double x, y;
};

bool in_ball(IconPlace at, IconPlace centre) {
    return std::hypot(at.x - centre.x, at.y - centre.y) < 0.125;
}

Pixel colour_at(IconPlace at) {
    constexpr double rim = 0.52, rim_thickness = 0.06, bottom = 0.82;
    const double from_middle = std::abs(at.x - 0.5);
    if (at.y >= rim && at.y < rim + rim_thickness) return from_middle < 0.37 ? ink : paper;
    if (at.y >= rim && at.y < bottom) return from_middle < 0.36 - 0.3 * (at.y - rim) ? ink : paper;
    if (at.y >= rim) return paper;
    for (const IconPlace ball : {IconPlace{0.36, 0.42}, {0.64, 0.42}, {0.5, 0.22}})
        if (in_ball(at, ball)) return red;
    return paper;
}

Pixel mean_colour(const std::array<int, 3>& sums) {
    Pixel pixel{};
    for (std::size_t i = 0; i < pixel.size(); ++i)
        pixel[i] = static_cast<unsigned char>((sums[i] + samples * samples / 2) / (samples * samples));
    return pixel;
}

}  // namespace

std::string home_icon(int pixels, IconRoom room) {
    const double scale = room == IconRoom::maskable ? 0.8 : 1;
    const auto along = [&](int pixel, int sample) {
        return 0.5 + ((pixel + (sample + 0.5) / samples) / pixels - 0.5) / scale;
    };
    std::vector<Pixel> picture;
    for (int y = 0; y < pixels; ++y) {
        for (int x = 0; x < pixels; ++x) {
            std::array<int, 3> sums{};
            for (int i = 0; i < samples * samples; ++i) {
                const Pixel sample = colour_at({along(x, i % samples), along(y, i / samples)});
                for (std::size_t c = 0; c < sums.size(); ++c) sums[c] += sample[c];
            }
            picture.push_back(mean_colour(sums));
        }
    }
    return png(picture, pixels);
}

}  // namespace baitwright
