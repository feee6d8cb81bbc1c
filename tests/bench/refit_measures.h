// Parts of the refit benchmark: the layout in order on walls of realistic size.
#pragma once

#include "tests/bench/bench.h"

namespace sillwright::bench {

// How the time grows with the stations and with the pieces of a wall: exponents of a fit, 1 is linear.
std::vector<Measure> refitGrowth();

// Against a general mixed-integer solver on the same walls; empty where none is installed.
std::vector<Measure> refitAgainstSolver();

// A whole house in which every bar moved, against painting the window.
std::vector<Measure> refitOfAHouse(int& argc, char** argv);

} // namespace sillwright::bench
