// toml++ compiled into the program once, in place of its shared library, whose loading costs every command more than
// parsing a file does (see docs/decisions.md).
//
// The parser takes a heading's first letter for one of a key before it looks: a bracket with nothing behind it ended
// the program, or, in a release, anything could follow. Without that promise it looks, and says what is wrong
// (toml++ 3.3).
#undef NDEBUG
#define TOML_ASSERT(promise) static_cast<void>(0)
#define TOML_IMPLEMENTATION
#include <toml++/toml.h>
