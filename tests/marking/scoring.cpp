#include "tests/marking/scoring.h"

#include <algorithm>
#include <array>
#include <span>
#include <stdexcept>

#include "tests/marking/blind_mistakes.h"
#include "tests/marking/fresh_mistakes.h"
#include "tests/marking/new_mistakes.h"

namespace wardchalk::test {

namespace {

using Names = std::vector<std::string>;

bool has(const Names& names, std::string_view name) { return std::ranges::find(names, name) != names.end(); }

std::string numberOf(const std::string& name) {
  for (const std::span<const NewMistake> known :
       {std::span<const NewMistake>(newMistakes), std::span<const NewMistake>(freshMistakes),
        std::span<const NewMistake>(blindMistakes)})
    if (const auto found = std::ranges::find(known, name, &NewMistake::name); found != known.end())
      return std::string(found->number);
  return name;
}

Names fairNames(const FrozenLine& line) {
  Names fair = {numberOf(line.mistake)};
  for (const std::string& name : line.also) fair.push_back(numberOf(name));
  // one act with a name of its own on these lines: pounds in a dose, and a bag's strength multiplied
  if (line.mistake == "E01" && line.line != "weight") fair.emplace_back("E59");
  if (line.mistake == "E33" && line.line == "rate") fair.emplace_back("E77");
  // a dose that is not below the low end is called so: that comparison was read backwards
  if (line.mistake == "new:called too low") fair.emplace_back("E26");
  if (line.mistake == "E42" && (line.line == "weight" || line.line == "bsa")) fair.emplace_back("E17");
  if (line.mistake == "new:multiplied the daily dose by the doses") fair.emplace_back("E67");
  return fair;
}

/// What the marker names: its mistakes without those of writing; a unit counts where nothing else is named,
/// or where it is what was made.
Names namesIn(const LineMark& mark, const Names& fair) {
  static constexpr std::array<std::string_view, 3> written = {"E44", "E45", "E47"};
  Names names;
  for (const MistakeId mistake : mark.mistakes)
    if (std::ranges::find(written, idOf(mistake)) == written.end()) names.emplace_back(idOf(mistake));
  if (names.size() > 1 && !has(fair, "E46")) std::erase(names, "E46");
  return names;
}

bool carries(const LineMark& mark, const std::string& remark) {
  if (remark.empty()) return true;
  if (remark == "reason") return !mark.notes.empty();
  if (remark == "below-low" || remark == "below-usual") return mark.has(LineNote::asksForTooLittle);
  if (remark == "truncated") return mark.has(LineNote::cutOff);
  if (remark == "schedule-differs") return mark.has(LineNote::asksForSchedule);
  const auto mistake = mistakeWithId(remark);
  return mistake && mark.has(*mistake);
}

bool isUnread(const LineMark& mark) {
  return mark.fault || mark.has(LineNote::noResult) || mark.has(LineNote::notAVerdict) ||
         mark.has(LineNote::notAComparison);
}

Judged judgedRight(const FrozenLine& line, const LineMark& mark) {
  if (mark.mark != Mark::right) return isUnread(mark) ? Judged::unread : Judged::wrong;
  return carries(mark, line.remark) ? Judged::right : Judged::remarkMissing;
}

/// A mistake of writing takes nothing from the number: the line is right, and the remark beside it names it.
bool isRightWithItsRemark(const FrozenLine& line, const LineMark& mark) {
  const auto made = mistakeWithId(line.mistake);
  return made && infoOf(*made).kind == MistakeKind::writing && mark.has(*made);
}

Judged judgedMistake(const FrozenLine& line, const LineMark& mark) {
  const Names fair = fairNames(line);
  if (mark.mark == Mark::right)
    return isRightWithItsRemark(line, mark) ? Judged::named : Judged::takenForRight;
  const Names names = namesIn(mark, fair);
  if (names.empty()) return Judged::notNamed;
  const auto isFair = [&](const std::string& name) { return has(fair, name); };
  if (std::ranges::all_of(names, isFair)) return Judged::named;
  return std::ranges::any_of(names, isFair) ? Judged::amongOthers : Judged::misnamed;
}

std::string inShort(const LineMark& mark) {
  std::string text(idOf(mark.mark));
  for (const MistakeId mistake : mark.mistakes) text.append(" ").append(idOf(mistake));
  for (const LineNote note : mark.notes) text.append(" ").append(idOf(note));
  if (mark.fault) text.append(" cannot be read: ").append(idOf(mark.fault->code));
  return text;
}

std::size_t askNamed(const Problem& problem, const std::string& id) {
  const auto found = std::ranges::find(problem.asks, id, [](const Ask& ask) { return idOf(ask); });
  if (found == problem.asks.end()) throw std::runtime_error("nothing asks for " + id);
  return static_cast<std::size_t>(found - problem.asks.begin());
}

}  // namespace

Scoring::Scoring(LineSet set) : problems_(frozenProblems(set)) {
  for (const auto& [id, problem] : problems_) markings_[id] = std::make_unique<Marking>(problem);
}

JudgedLine Scoring::judge(const FrozenLine& line) {
  const Problem& problem = problems_.at(line.problem);
  Marking& marking = *markings_.at(line.problem);
  const std::size_t ask = askNamed(problem, line.line);
  for (std::size_t i = 0; i < ask; ++i) {
    const auto earlier = line.earlier.find(std::string(idOf(problem.asks[i])));
    marking.mark(i, earlier == line.earlier.end() ? std::string_view() : std::string_view(earlier->second));
  }
  const LineMark mark = marking.mark(ask, line.text);
  return {&line, line.mistake.empty() ? judgedRight(line, mark) : judgedMistake(line, mark), inShort(mark)};
}

std::string_view nameOf(Judged how) {
  static constexpr std::array<std::string_view, judgedWays> names = {
      "right",        "remark missing",  "wrong",    "unread",   "named",
      "among others", "taken for right", "misnamed", "not named"};
  return names[static_cast<std::size_t>(how)];
}

}  // namespace wardchalk::test
