// Starters: a few lengths in, a piece of foundation out that is drawn, framed and laid out. What comes out is an
// ordinary edit. Lengths in inches, stations in the wall frame.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/model/job.h"

namespace sillwright {

struct StarterLength {
  std::string key;                  // "opening"; also the place that a problem names
  std::string name;                 // "Width of the opening"
  std::optional<double> usual = {}; // none: it may be left out
  std::string without = {};         // what holds then: "in the middle"
};

struct Starter {
  std::string key;   // "two-piers"
  std::string title; // "Opening with two piers"
  std::string about; // one sentence
  std::vector<StarterLength> lengths;
};

// In the order they are offered. The first two lengths of each are of the outline: front and side.
std::span<const Starter> starters();
inline constexpr std::size_t kOutlineLengths = 2;

struct Started {
  Job job;
  Id wall; // what was asked for stands on this one
};

// New walls beside those of the job, a closed rectangle, its front laid out as the starter says, with sills, columns at
// the ends and at openings, panels with the first mark of the plan, straps and bolts. `onto`: not new walls, but that
// one; precondition: it is blank. Lengths in the order of the starter (with `onto` those of the outline are not looked
// at); nothing: left out. Problem: names the length, or says what of the rules cannot be met; what is given has no FIX.
Result<Started> start(const Job& job, const Starter& starter, std::span<const std::optional<double>> lengths,
                      Id onto = {});

// Nothing stands on it and no opening is in it.
bool isBlank(const WallLine& wall);

} // namespace sillwright
