#include "tests/ui/support/qt_class.h"

#include <cstdio>
#include <map>
#include <string>

namespace wardchalk::ui::test {
namespace {

using Classes = std::multimap<std::string, RunClass>;

/// Filled before main, in whatever order the files are linked.
Classes& classes() {
  static Classes all;
  return all;
}

}  // namespace

bool knowClass(const char* name, RunClass run) {
  classes().emplace(name, run);
  return true;
}

}  // namespace wardchalk::ui::test

int main(int argc, char** argv) {
  const auto& known = wardchalk::ui::test::classes();
  if (argc > 1)
    if (const auto found = known.find(argv[1]); found != known.end())
      return found->second(argc - 1, argv + 1);
  for (const auto& [name, run] : known) std::puts(name.c_str());
  return 2;
}
