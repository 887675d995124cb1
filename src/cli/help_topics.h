#pragma once

#include <string>
#include <string_view>
#include <vector>

/// What help says of no one command: how wetness is counted, which sizes have names. A screen each.
namespace baitwright {

/// "topics", "wetness", "feels", ... : none is a command's first word.
std::vector<std::string> topic_names();

/// What the topic says, at most 24 lines of 80 columns; empty where there is no such topic. The feels are the shipped
/// ones.
std::string topic_text(std::string_view name);

}  // namespace baitwright
