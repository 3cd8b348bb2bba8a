#include "ui/shell/offered_actions.h"

namespace wardchalk::ui {

namespace {

using A = ActionId;

/// What tells nothing of a case and changes nothing in it.
QSet<A> harmless() {
  return {A::newChild, A::quit, A::zoomIn, A::zoomOut, A::zoomReset, A::shortHelp, A::about, A::sayAgain};
}

/// What a person needs to fill in the form and to read the own working.
QSet<A> ofEntering() {
  return {A::undo,           A::redo,           A::copyWorking,     A::copyWorkingMathMl, A::copyWorkingLatex,
          A::copyStep,       A::copyStepMathMl, A::copyStepLatex,   A::otherSide,         A::goToFlag,
          A::goToForm,       A::formWider,      A::formNarrower,    A::moreFields,        A::unitsMetric,
          A::unitsHousehold, A::unitsNone,      A::chooseReference, A::emptyReference,    A::settings,
          A::secondCompare,  A::secondLeave};
}

QSet<A> ofTheUsual() {
  QSet<A> all;
  for (const ActionSpec& spec : actionTable()) all << spec.id;
  return all - QSet<A>{A::secondCompare, A::secondLeave};
}

}  // namespace

QSet<ActionId> offeredActions(SessionState state) {
  switch (state) {
    case SessionState::alone:
    case SessionState::agreed:
    case SessionState::differs:
    case SessionState::differedBefore:
      return ofTheUsual();
    case SessionState::secondEnters:
    case SessionState::firstCorrects:
    case SessionState::secondCorrects:
      return harmless() + ofEntering();
    case SessionState::comparingAlike:
    case SessionState::comparingApart:
      return harmless() + QSet<A>{A::secondLeave};
    case SessionState::covered:
      return harmless();
  }
  return harmless();
}

}  // namespace wardchalk::ui
