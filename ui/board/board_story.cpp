#include "ui/board/board_story.h"

#include <algorithm>
#include <set>
#include <utility>

#include "core/check/deciding_steps.h"
#include "core/words/phrasebook.h"
#include "ui/theme/text.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui {

namespace {

bool findsSomething(const StepView& view) {
  return std::holds_alternative<Solved>(view.step.body) ||
         std::holds_alternative<SurfaceByFormula>(view.step.body);
}

/// The least that is usual is worked out by the step that compares with it; a number line before it must not
/// tell.
void hideUnfoundLow(StepView& view, const Worksheet& sheet) {
  if (sheet.given.reference.low || view.step.id >= StepId::compareLow) return;
  std::erase_if(view.landmarks,
                [](const Landmark& landmark) { return landmark.kind == Landmark::Kind::low; });
}

}  // namespace

BoardStory::BoardStory(Shown shown) : shown_(std::move(shown)), facts_(caseFacts(sheet().given)) {
  addPages();
}

bool BoardStory::tellInShort(bool inShort) {
  const std::size_t before = pages_.size();
  std::vector<BoardPage> all = std::exchange(pages_, {});
  const bool was = std::exchange(inShort_, inShort);
  addPages();
  if (was != inShort && pages_.size() != before) return true;
  pages_ = std::move(all);
  inShort_ = was;
  return false;
}

void BoardStory::addPages() {
  const std::set<StepId> deciding = decidingSteps(sheet());
  int last = 0;
  for (StepView& view : stepViews(sheet())) {
    last = view.number;
    if (!inShort_ || deciding.contains(view.step.id)) addStep(std::move(view));
  }
  BoardPage verdict;
  verdict.number = last + 1;
  verdict.isVerdict = true;
  verdict.stages.resize(2);
  pages_.push_back(std::move(verdict));
}

void BoardStory::addStep(StepView view) {
  BoardPage page;
  page.number = view.number;
  page.stages = stagesOf(view);
  hideUnfoundLow(view, sheet());
  if (findsSomething(view)) page.found = view.conclusion;
  page.view = std::move(view);
  pages_.push_back(std::move(page));
}

const BoardPage& BoardStory::page(const BoardPlace& place) const {
  return pages_[static_cast<std::size_t>(place.page)];
}

int BoardStory::lastStage(int page) const {
  return static_cast<int>(pages_[static_cast<std::size_t>(page)].stages.size()) - 1;
}

BoardPlace BoardStory::last() const {
  const int page = static_cast<int>(pages_.size()) - 1;
  return {page, lastStage(page), false};
}

std::optional<BoardPlace> BoardStory::atNumber(int number) const {
  for (std::size_t i = 0; i < pages_.size(); ++i)
    if (pages_[i].number == number) return BoardPlace{static_cast<int>(i), 0, false};
  return std::nullopt;
}

BoardPlace BoardStory::atOrAfter(int number) const {
  const auto found =
      std::ranges::find_if(pages_, [&](const BoardPage& page) { return page.number >= number; });
  const auto page = found == pages_.end() ? std::prev(pages_.end()) : found;
  return {static_cast<int>(page - pages_.begin()), 0, false};
}

BoardPlace BoardStory::next(BoardPlace place, bool predict) const {
  if (place.stage == 0 && predict && !place.predicting) return {place.page, 0, true};
  if (place.stage < lastStage(place.page)) return {place.page, place.stage + 1, false};
  if (place == last()) return place;
  return {place.page + 1, 0, false};
}

BoardPlace BoardStory::back(BoardPlace place, bool predict) const {
  if (place.predicting) return {place.page, 0, false};
  if (place.stage > 0) return {place.page, place.stage - 1, predict && place.stage == 1};
  if (place.page == 0) return place;
  return {place.page - 1, lastStage(place.page - 1), false};
}

QStringList BoardStory::found(const BoardPlace& place) const {
  QStringList found;
  for (int i = 0; i <= place.page; ++i) {
    const BoardPage& page = pages_[static_cast<std::size_t>(i)];
    const bool uncovered = i < place.page || place.stage == lastStage(i);
    if (page.found.isEmpty() || !uncovered) continue;
    found << held(say(PhraseId::board_foundStep,
                      {{"n", std::to_string(page.number)}, {"result", page.found.toStdString()}}));
  }
  return found;
}

}  // namespace wardchalk::ui
