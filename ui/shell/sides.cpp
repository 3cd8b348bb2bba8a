#include "ui/shell/sides.h"

#include <algorithm>

#include "ui/form/form.h"
#include "ui/theme/letters.h"
#include "ui/working/working_pane.h"

namespace wardchalk::ui {

namespace {

/// Pixels at the usual letters: below the first there is one column.
constexpr int leastForTwo = 900;
constexpr int usualForm = 480;
constexpr int widestForm = 560;
constexpr int edgeStep = 40;

}  // namespace

Sides::Sides(Form* form, WorkingPane* pane, QWidget* parent)
    : QSplitter(Qt::Horizontal, parent), form_(form), pane_(pane) {
  setChildrenCollapsible(false);
  addWidget(form_);
  addWidget(pane_);
  form_->lower();  // so that it comes before the working for who walks through the tree
  setStretchFactor(0, 0);
  setStretchFactor(1, 1);
  setSizes({usualForm, leastForTwo});
  connect(this, &QSplitter::splitterMoved, this, [this] { formWidth_ = form_->width(); });
  connect(form_, &Form::heightChanged, pane_, &WorkingPane::followGuest);
}

void Sides::setFormWidth(int width) {
  formWidth_ = std::max(0, width);
  placeEdge();
}

void Sides::moveEdge(int steps) {
  if (!sized_ || oneColumn_) return;
  setFormWidth(form_->width() + qRound(steps * edgeStep * textScale()));
  formWidth_ = form_->width();
}

/// The working keeps what it needs.
int Sides::mostForForm() const {
  const int needed = qRound((leastForTwo - usualForm) * textScale());
  return std::max(form_->minimumWidth(), width() - handleWidth() - needed);
}

void Sides::follow() {
  if (!sized_) return;  // nothing is meant by the size that a widget has before its window has one
  const bool narrow = width() < leastForTwo * textScale();
  if (narrow != oneColumn_) {
    oneColumn_ = narrow;
    form_->keepingKeyboard([this] { oneColumn_ ? becomeOneColumn() : becomeTwo(); });
  }
  placeEdge();
}

void Sides::becomeOneColumn() {
  form_->standInColumn(true);
  pane_->host(form_);
}

/// The keyboard goes through the form, and then from the flag on.
void Sides::becomeTwo() {
  form_->standInColumn(false);
  insertWidget(0, form_);
  setStretchFactor(0, 0);
  setStretchFactor(1, 1);
  form_->show();
  pane_->host(nullptr);
}

/// The edge stays where somebody drew it.
void Sides::placeEdge() {
  if (!sized_ || oneColumn_) return;
  const double scale = textScale();
  const int third = std::clamp(width() / 3, qRound(usualForm * scale), qRound(widestForm * scale));
  const int room = width() - handleWidth();
  const int wide = std::clamp(formWidth_ > 0 ? formWidth_ : third, form_->minimumWidth(), mostForForm());
  if (form_->width() == wide && pane_->width() == room - wide) return;
  setSizes({wide, room - wide});
}

void Sides::resizeEvent(QResizeEvent* event) {
  QSplitter::resizeEvent(event);
  sized_ = true;
  follow();
}

}  // namespace wardchalk::ui
