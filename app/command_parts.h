// What the commands share.
#pragma once

#include <string>
#include <string_view>

#include "app/call.h"
#include "app/commands.h"
#include "core/model/wall.h"

namespace sillwright {

// One line on standard error; returns the status of a wrong call.
int refuse(const Problem& problem);

std::string jsonText(std::string_view text); // quoted and escaped
std::string shortest(double value);
// The mark of a piece, its number where it has none.
std::string markOrNumber(const WallLine& wall, Id piece);

// Each takes its call; argc and argv are the program's own, for the toolkit.
int check(const Call& call, int& argc, char** argv);
int sheet(const Call& call, int& argc, char** argv);
int rules(const Call& call, int& argc, char** argv);
int refitOfJob(const Call& call, int& argc, char** argv);
int slotsOfJob(const Call& call, int& argc, char** argv);

} // namespace sillwright
