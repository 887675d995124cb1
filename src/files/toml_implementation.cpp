// toml++ compiled into the program once, in place of its shared library, whose loading costs every command more than
// parsing a file does (see docs/decisions.md).
#define TOML_IMPLEMENTATION
#include <toml++/toml.h>
