#include "ui/working/stages.h"

#include <utility>

#include "ui/working/detail/syringe.h"

namespace wardchalk::ui {

namespace {

using Kind = StageKind;

class StageList {
 public:
  void add(Kind kind, std::size_t count = 1) {
    for (std::size_t i = 0; i < count; ++i) stages_.push_back({kind, static_cast<int>(i)});
  }

  void addSolved(const StepView& view, const Solved& solved) {
    add(Kind::sum, static_cast<std::size_t>(view.sums.size()));
    add(Kind::factor, solved.chain.rooted ? 1 : solved.chain.factors.size());
    add(Kind::strike, solved.product.pairs.size());
    if (!view.underRoot.isEmpty()) add(Kind::underRoot);
    addResult(view);
  }

  void addResult(const StepView& view) {
    add(Kind::product);
    if (!view.rounding.isEmpty()) add(Kind::rounded);
  }

  void addMeasuring(const Measuring& measuring) {
    add(Kind::amount);
    if (detail::drawsSyringe(measuring)) add(Kind::scale);
    add(Kind::reading);
  }

  std::vector<Stage> take() { return std::move(stages_); }

 private:
  std::vector<Stage> stages_;
};

}  // namespace

std::vector<Stage> stagesOf(const StepView& view) {
  StageList list;
  list.add(Kind::question);
  if (const auto* solved = std::get_if<Solved>(&view.step.body)) {
    list.addSolved(view, *solved);
  } else if (std::holds_alternative<SurfaceByFormula>(view.step.body)) {
    list.add(Kind::factor);
    list.addResult(view);
  } else if (std::holds_alternative<Comparison>(view.step.body)) {
    for (const Kind kind : {Kind::sides, Kind::claim, Kind::truth}) list.add(kind);
  } else {
    list.addMeasuring(std::get<Measuring>(view.step.body));
  }
  return list.take();
}

}  // namespace wardchalk::ui
