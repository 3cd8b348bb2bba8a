#include "core/practice/sessions/session.h"

#include <algorithm>
#include <utility>

#include "core/number/ascii.h"

namespace wardchalk {

namespace {

std::vector<MarkedLine> marksOf(const PracticeProblem& problem, const PracticeSet& set) {
  std::vector<std::string> texts;
  for (const PracticeLine& line : problem.lines) texts.push_back(line.text);
  return markedLines(problem.problem, texts, {set.wantsUnits, set.wantsReason});
}

void remember(PracticeLine& line) {
  for (const MistakeId mistake : line.marked->mark.mistakes)
    if (std::ranges::find(line.met, mistake) == line.met.end()) line.met.push_back(mistake);
}

/// Every line that is marked, once more, on what stands before it now.
void markAgain(PracticeProblem& problem, const PracticeSet& set) {
  std::vector<MarkedLine> marks = marksOf(problem, set);
  for (std::size_t i = 0; i < marks.size(); ++i)
    if (problem.lines[i].marked) problem.lines[i].marked = std::move(marks[i]);
}

bool anyMarkedAfter(const PracticeProblem& problem, std::size_t line) {
  return std::any_of(problem.lines.begin() + static_cast<std::ptrdiff_t>(line) + 1, problem.lines.end(),
                     [](const PracticeLine& later) { return later.marked.has_value(); });
}

}  // namespace

bool PracticeProblem::isCovered(std::size_t line, bool saysVerdict) const {
  if (handedIn || saysVerdict) return false;
  const auto end = problem.asks.begin() + static_cast<std::ptrdiff_t>(line);
  return std::any_of(problem.asks.begin(), end, [](const Ask& ask) { return ask.isVerdict(); });
}

std::vector<CarriedAnswer> earlierAnswers(const PracticeProblem& problem, std::size_t line) {
  Marking marking(problem.problem);
  for (std::size_t i = 0; i < line; ++i) marking.mark(i, problem.lines[i].text);
  return marking.carriedTo(line);
}

PracticeSession::PracticeSession(PracticeSet set, PracticeMode mode) : set_(std::move(set)), mode_(mode) {
  set_.count = std::clamp(set_.count, 1, mostProblems);
  set_.level = std::clamp(set_.level, lowestLevel, highestLevel);
  for (; drawn_ < set_.count; ++drawn_)
    slots_.push_back({topicInSet(set_, drawn_), seedInSet(set_.seed, drawn_), std::nullopt});
}

PracticeProblem& PracticeSession::made(std::size_t place) const {
  const Slot& slot = slots_[std::min(place, slots_.size() - 1)];
  if (!slot.made) {
    slot.made.emplace();
    slot.made->problem = makeProblem(slot.topic, set_.level, slot.seed, set_.rules);
    slot.made->lines.resize(slot.made->problem.asks.size());
  }
  return *slot.made;
}

const PracticeProblem& PracticeSession::at(std::size_t place) const { return made(place); }

void PracticeSession::goTo(std::size_t place) { place_ = std::min(place, slots_.size() - 1); }

void PracticeSession::write(std::size_t line, std::string_view text) {
  PracticeProblem& problem = made(place_);
  if (problem.handedIn || line >= problem.lines.size() || problem.lines[line].text == text) return;
  problem.lines[line].text = text;
  problem.lines[line].marked.reset();
  if (anyMarkedAfter(problem, line)) markAgain(problem, set_);
}

void PracticeSession::check(std::size_t line) {
  PracticeProblem& problem = made(place_);
  if (mode_ == PracticeMode::test || problem.handedIn || line >= problem.lines.size()) return;
  PracticeLine& checked = problem.lines[line];
  checked.marked.emplace();
  markAgain(problem, set_);
  if (isTry(checked.marked->mark.mark)) ++checked.tries;
  remember(checked);
}

void PracticeSession::climb(std::size_t line) {
  PracticeProblem& problem = made(place_);
  if (!set_.hints || mode_ == PracticeMode::test || problem.handedIn || line >= problem.lines.size()) return;
  PracticeLine& hinted = problem.lines[line];
  if (hinted.marked && !hinted.isRight()) hinted.rung = std::min(hinted.rung + 1, lastRung);
}

void PracticeSession::spend(std::size_t line, long seconds) {
  PracticeProblem& problem = made(place_);
  if (!problem.handedIn && line < problem.lines.size()) problem.lines[line].seconds += std::max(0L, seconds);
}

void PracticeSession::skip() {
  PracticeProblem& problem = made(place_);
  problem.skipped = !problem.handedIn;
}

void PracticeSession::takeUp() { made(place_).skipped = false; }

void PracticeSession::oneMore() {
  const Slot more{slots_[place_].topic, seedInSet(set_.seed, drawn_++), std::nullopt};
  slots_.insert(slots_.begin() + static_cast<std::ptrdiff_t>(place_) + 1, more);
}

void PracticeSession::handIn(PracticeProblem& problem) {
  if (problem.handedIn || problem.skipped) return;
  std::vector<PracticeLine*> now;
  for (PracticeLine& line : problem.lines) {
    if (line.marked) continue;
    line.marked.emplace();
    now.push_back(&line);
  }
  markAgain(problem, set_);
  for (PracticeLine* line : now)
    if (isTry(line->marked->mark.mark)) ++line->tries;
  for (PracticeLine& line : problem.lines) remember(line);
  problem.handedIn = true;
}

void PracticeSession::handIn() {
  if (mode_ == PracticeMode::learning) return handIn(made(place_));
  for (std::size_t i = 0; i < slots_.size(); ++i) handIn(made(i));
}

bool PracticeSession::isOver() const {
  return std::ranges::all_of(
      slots_, [](const Slot& slot) { return slot.made && (slot.made->handedIn || slot.made->skipped); });
}

}  // namespace wardchalk
