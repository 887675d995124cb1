#pragma once

#include <string>

namespace baitwright {

/// What a phone does to an icon: shows it as it is, or cuts a shape of its own out of it, of which only the middle
/// four fifths are sure to stay (W3C, Web Application Manifest, "maskable").
enum class IconRoom { square, maskable };

/// The mark of the bank page on a home screen, a PNG of so many pixels each way: on paper three red balls over
/// a tub of ink.
std::string home_icon(int pixels, IconRoom room);

}  // namespace baitwright
