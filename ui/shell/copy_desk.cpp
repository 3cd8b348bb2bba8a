#include "ui/shell/copy_desk.h"

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <algorithm>
#include <array>
#include <utility>

#include "ui/shell/actions.h"
#include "ui/shell/own_clipboard.h"
#include "ui/working/step_card.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui {

namespace {

constexpr std::array workingActions = {std::pair(ActionId::copyWorking, CopyAs::text),
                                       std::pair(ActionId::copyWorkingMathMl, CopyAs::mathMl),
                                       std::pair(ActionId::copyWorkingLatex, CopyAs::latex),
                                       std::pair(ActionId::copyWorkingPicture, CopyAs::picture),
                                       std::pair(ActionId::copyWorkingSvg, CopyAs::svg)};
constexpr std::array stepActions = {
    std::pair(ActionId::copyStep, CopyAs::text), std::pair(ActionId::copyStepMathMl, CopyAs::mathMl),
    std::pair(ActionId::copyStepLatex, CopyAs::latex), std::pair(ActionId::copyStepPicture, CopyAs::picture),
    std::pair(ActionId::copyStepSvg, CopyAs::svg)};

}  // namespace

CopyDesk::CopyDesk(WorkingPane& pane, Actions& actions, const Shown& shown, QObject* parent)
    : QObject(parent), pane_(pane), actions_(actions), shown_(shown) {
  for (const auto& [id, as] : workingActions) actions_.bind(id, [this, as = as] { copyWorking(as); });
  for (const auto& [id, as] : stepActions) actions_.bind(id, [this, as = as] { copyStep(as); });
  // A right click or the Menu key on a card comes up to the pane.
  pane_.setContextMenuPolicy(Qt::CustomContextMenu);
  connect(&pane_, &QWidget::customContextMenuRequested, this, &CopyDesk::showMenu);
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { follow(now); });
  enable();
}

void CopyDesk::follow(QWidget* focused) {
  auto* card = qobject_cast<StepCard*>(focused);
  if (!card || !pane_.isAncestorOf(card)) return;
  card_ = card;
  disconnect(gone_);
  gone_ = connect(card, &QObject::destroyed, this, [this] {
    card_.clear();
    enable();
  });
  enable();
}

/// A step can be copied once one has been gone to.
void CopyDesk::enable() {
  for (const auto& [id, as] : stepActions) actions_[id]->setEnabled(!card_.isNull());
}

/// A picture is of steps: before there is one, what was copied before stays.
void CopyDesk::copyWorking(CopyAs as) {
  const bool drawn = as == CopyAs::picture || as == CopyAs::svg;
  if (!drawn || !shown_->steps.empty()) OwnClipboard::put(workingAs(as, shown_));
}

void CopyDesk::copyStep(CopyAs as) {
  const auto& cards = pane_.cards();
  const auto at = std::find(cards.begin(), cards.end(), card_.data());
  const auto step = static_cast<std::size_t>(at - cards.begin());
  if (at != cards.end() && step < shown_->steps.size()) OwnClipboard::put(stepAs(as, step, shown_));
}

void CopyDesk::showMenu(const QPoint& at) {
  QWidget* widget = pane_.childAt(at);
  while (widget && !qobject_cast<StepCard*>(widget))
    widget = widget == &pane_ ? nullptr : widget->parentWidget();
  // the Menu key asks for the card that has the keyboard, though its middle may be scrolled out of sight
  if (!widget && card_ && card_->hasFocus()) widget = card_;
  if (!widget) return;
  follow(widget);
  actions_.menu(MenuId::copyStep)->popup(pane_.mapToGlobal(at));
}

}  // namespace wardchalk::ui
