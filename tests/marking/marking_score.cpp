// Marks every line of the frozen sets and prints how it was judged: in all, by manner of writing, by mistake.
//   marking_score            the counts
//   marking_score --lines    also each line that was not judged as its author says
//   marking_score --fresh    the fresh set in place of the first one, --blind the blind one

#include <chrono>
#include <exception>
#include <iostream>
#include <span>
#include <string_view>

#include "tests/marking/scoring.h"

namespace wardchalk::test {

namespace {

/// A line break of a student's line, in one line of ours.
std::string inOneLine(std::string text) {
  for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n'))
    text.replace(at, 1, " | ");
  return text;
}

bool isAsItShould(Judged how) { return how == Judged::right || how == Judged::named; }

void print(const JudgedLine& judged) {
  const FrozenLine& line = *judged.line;
  std::cout << nameOf(judged.how) << (line.disputed ? " (disputed)" : "") << '\t' << line.id << '\t'
            << line.problem << ' ' << line.line << '\t' << inOneLine(line.text) << '\t';
  for (const auto& [id, text] : line.earlier) std::cout << id << ": " << text << "; ";
  std::cout << '\t' << line.manner << ' ' << line.mistake;
  for (const std::string& also : line.also) std::cout << ' ' << also;
  std::cout << '\t' << judged.marked << '\n';
}

void print(const std::string& head, const Counts& counts) {
  std::cout << head << ':';
  for (const auto& [how, count] : counts) std::cout << ' ' << nameOf(how) << ' ' << count << ';';
  std::cout << '\n';
}

using Groups = std::map<std::string, Counts>;

void printGroups(const Groups& groups) {
  for (const auto& [name, counts] : groups) print("  " + name, counts);
}

void score(Scoring& scoring, const std::vector<FrozenLine>& lines, bool each, const std::string& head) {
  Groups groups;
  Counts all;
  Counts disputed;
  for (const FrozenLine& line : lines) {
    const JudgedLine judged = scoring.judge(line);
    if (line.disputed) {
      ++disputed[judged.how];
      continue;
    }
    ++all[judged.how];
    ++groups[line.mistake.empty() ? line.manner : line.mistake][judged.how];
    if (each && !isAsItShould(judged.how)) print(judged);
  }
  print(head, all);
  if (!disputed.empty()) print(head + ", disputed", disputed);
  printGroups(groups);
}

}  // namespace

int scoreAll(bool each, LineSet set) {
  Scoring scoring(set);
  const auto right = frozenRightLines(set);
  const auto mistakes = frozenMistakes(set);
  const auto begin = std::chrono::steady_clock::now();
  score(scoring, right, each, "right lines");
  score(scoring, mistakes, each, "mistakes");
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
  std::cout << took.count() / static_cast<double>(right.size() + mistakes.size())
            << " ms for a line with those before it\n";
  return 0;
}

}  // namespace wardchalk::test

int main(int count, char** arguments) {
  try {
    bool each = false;
    auto set = wardchalk::test::LineSet::first;
    for (const std::string_view word : std::span(arguments, static_cast<std::size_t>(count)).subspan(1)) {
      if (word == "--lines") each = true;
      if (word == "--fresh") set = wardchalk::test::LineSet::fresh;
      if (word == "--blind") set = wardchalk::test::LineSet::blind;
    }
    return wardchalk::test::scoreAll(each, set);
  } catch (const std::exception& error) {
    std::cerr << error.what() << '\n';
    return 1;
  }
}
