// Tries grids whole against plain reckonings in whole numbers, which share no code with the core.
//
//   corners [surface] [syringes] [schedules] [spellings]      none named: all
#include <algorithm>
#include <array>
#include <iostream>
#include <string_view>
#include <vector>

#include "tests/corners/tally.h"

namespace {

struct Grid {
  std::string_view name;
  long (*tried)();
};

constexpr std::array grids = {
    Grid{"surface", wardchalk::corners::surface::tryWhole},
    Grid{"syringes", wardchalk::corners::syringes::tryWhole},
    Grid{"schedules", wardchalk::corners::schedules::tryWhole},
    Grid{"spellings", wardchalk::corners::spellings::tryWhole},
};

}  // namespace

int main(int count, char** words) {
  const std::vector<std::string_view> wanted(words + 1, words + count);
  for (const std::string_view name : wanted)
    if (std::ranges::find(grids, name, &Grid::name) == grids.end()) {
      std::cerr << "no such grid: " << name << '\n';
      return 2;
    }
  long wrong = 0;
  for (const Grid& grid : grids)
    if (wanted.empty() || std::ranges::find(wanted, grid.name) != wanted.end()) wrong += grid.tried();
  return wrong == 0 ? 0 : 1;
}
