// fmt's own code, compiled once (as `files/toml_implementation.cpp` does for toml++): a shared library more would cost
// every command its time to load, and header-only it takes longer in each batch of files than they do themselves.
#include <fmt/format-inl.h>

FMT_BEGIN_NAMESPACE
namespace detail {
// What fmt's header leaves to whoever compiles it (fmt 9.1, src/format.cc).
template FMT_API auto dragonbox::to_decimal(float x) noexcept -> dragonbox::decimal_fp<float>;
template FMT_API auto dragonbox::to_decimal(double x) noexcept -> dragonbox::decimal_fp<double>;
#ifndef FMT_STATIC_THOUSANDS_SEPARATOR
template FMT_API locale_ref::locale_ref(const std::locale& locale);
template FMT_API auto locale_ref::get<std::locale>() const -> std::locale;
#endif
template FMT_API auto thousands_sep_impl(locale_ref) -> thousands_sep_result<char>;
template FMT_API auto decimal_point_impl(locale_ref) -> char;
template FMT_API void buffer<char>::append(const char*, const char*);
}  // namespace detail
FMT_END_NAMESPACE
