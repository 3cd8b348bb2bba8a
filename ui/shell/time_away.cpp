#include "ui/shell/time_away.h"

#include <algorithm>

#ifdef _WIN32
#define NOMINMAX  // or its macros stand in the way of std::max
#include <windows.h>
#elif defined(__linux__)
#include <ctime>
#endif

namespace wardchalk::ui {

namespace {

using std::chrono::milliseconds;

/// How far the wall clock may fall behind the other before it counts as set back. The network puts a clock
/// right that ran fast: by what a common crystal makes (50 ppm, from memory: 4.3 s in a day, 13 s over a long
/// weekend), and by a leap second. A person who sets a clock back moves it by a minute at least, the smallest
/// step of its dialog. In between nothing is lost: the other clock has counted all the same.
constexpr milliseconds putRight = std::chrono::seconds(30);

/// steady_clock is no clock for this: on Linux it stops in sleep.
milliseconds sinceBoot() {
#ifdef _WIN32
  return milliseconds(GetTickCount64());  // counts the time in sleep and hibernation
#elif defined(__linux__)
  timespec now{};
  clock_gettime(CLOCK_BOOTTIME, &now);
  return std::chrono::duration_cast<milliseconds>(std::chrono::seconds(now.tv_sec) +
                                                  std::chrono::nanoseconds(now.tv_nsec));
#else
  // Where this stops in sleep, the wall clock alone tells of it.
  return std::chrono::duration_cast<milliseconds>(std::chrono::steady_clock::now().time_since_epoch());
#endif
}

}  // namespace

ClockReading readClocks() {
  const auto wall = std::chrono::system_clock::now().time_since_epoch();
  return {sinceBoot(), std::chrono::duration_cast<milliseconds>(wall)};
}

milliseconds timeAway(const ClockReading& from, const ClockReading& to) {
  const milliseconds booted = to.sinceBoot - from.sinceBoot;
  const milliseconds walled = to.onTheWall - from.onTheWall;
  if (booted < milliseconds(0) || walled < booted - putRight) return tooLongToTell;
  return std::max(booted, walled);
}

}  // namespace wardchalk::ui
