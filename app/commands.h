// The commands of the command line. None of them needs a display.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace sillwright {

// Exit statuses: 0 nothing to fix, 1 something to fix, 2 the input or the call is wrong (one line on standard error).
inline constexpr int nothingToFix = 0;
inline constexpr int somethingToFix = 1;
inline constexpr int wrongCall = 2;

bool isCommand(std::string_view word);
// argc and argv are the program's own, for the toolkit; arguments is everything after the command word.
int runCommand(std::string_view command, std::span<const std::string> arguments, int& argc, char** argv);

std::string generalHelp();

} // namespace sillwright
