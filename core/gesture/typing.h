// The characters of a length, one key after the other.
#pragma once

#include <string>

namespace sillwright {

// The key can begin a length, where nothing is typed yet, or go on with what is.
bool isOfLength(const std::string& typed, char32_t key);
std::string utf8(char32_t key);
void dropLast(std::string& text); // the last character, not the last byte

} // namespace sillwright
