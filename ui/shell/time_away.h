#pragma once

#include <chrono>

namespace wardchalk::ui {

/// What two clocks say at one moment.
struct ClockReading {
  std::chrono::milliseconds sinceBoot;  ///< goes on in sleep, and nobody can set it; counts from anywhere
  std::chrono::milliseconds onTheWall;  ///< since 1970; set by people and by the network
};

/// Both clocks of this machine, now.
[[nodiscard]] ClockReading readClocks();

/// So long that it is over every limit: nobody can tell how long it was.
inline constexpr std::chrono::milliseconds tooLongToTell = std::chrono::milliseconds::max();

/// How long nobody was there between two readings: the longer of what both clocks say, since a machine that
/// is frozen whole, as virtual ones are, stops the one and not the other. A wall clock that was set back is
/// too long to tell.
[[nodiscard]] std::chrono::milliseconds timeAway(const ClockReading& from, const ClockReading& to);

}  // namespace wardchalk::ui
