// Writes random cases as `batch` reads them, one a line: seeded_cases COUNT SEED. Every fourth is an order of
// a rate.
#include <charconv>
#include <cstring>
#include <iostream>
#include <nlohmann/json.hpp>
#include <random>

#include "core/record/case_file.h"
#include "tests/support/random_case.h"

namespace {

using namespace wardchalk;

/// The numbers of one case, each from the last: a case is the same whichever came before it.
std::vector<std::uint32_t> rowOf(std::uint32_t seed, std::uint32_t index) {
  std::seed_seq sequence{seed, index};
  std::mt19937 numbers(sequence);
  std::vector<std::uint32_t> row(160);
  for (std::uint32_t& number : row) number = static_cast<std::uint32_t>(numbers());
  return row;
}

bool read(const char* text, std::uint32_t& number) {
  const char* end = text + std::strlen(text);
  const auto result = std::from_chars(text, end, number);
  return result.ec == std::errc{} && result.ptr == end;
}

}  // namespace

int main(int count, char** words) {
  std::uint32_t cases = 0;
  std::uint32_t seed = 0;
  if (count != 3 || !read(words[1], cases) || !read(words[2], seed)) {
    std::cerr << "seeded_cases COUNT SEED\n";
    return 2;
  }
  for (std::uint32_t index = 0; index < cases; ++index) {
    test::Choices choices(rowOf(seed, index));
    const test::RandomCase drawn = index % 4 == 3 ? test::randomRateCase(choices) : test::randomCase(choices);
    // the writer's indented object on one line
    std::cout << nlohmann::ordered_json::parse(writeCaseFile(drawn.entries)).dump() << '\n';
  }
}
