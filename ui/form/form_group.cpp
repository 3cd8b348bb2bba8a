#include "ui/form/form_group.h"

#include <QEvent>
#include <QFontInfo>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/access/answers.h"
#include "ui/form/answer_line.h"
#include "ui/form/column_grid.h"
#include "ui/form/field_edit.h"
#include "ui/theme/board_palette.h"
#include "ui/theme/buttons.h"
#include "ui/theme/edges.h"
#include "ui/theme/flow_layout.h"
#include "ui/theme/letters.h"
#include "ui/theme/plain_label.h"

namespace wardchalk::ui {

namespace {

constexpr int columns = ColumnGrid::columns;

/// Below so many letters of width, three fields do not fit beside each other, and then not two.
constexpr int fewLetters = 32;
constexpr int veryFewLetters = 28;
constexpr int headingHeight = 28;
constexpr double titleShare = 1.15;

}  // namespace

FormGroup::FormGroup(FieldGroup group, QWidget* parent) : QWidget(parent), group_(group) {
  giveRole(this, QAccessible::Grouping, headingOf(group));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  auto* heading = new QWidget(this);  // wraps when the letters are very large
  heading_ = new FlowLayout(heading);
  heading_->setSpacing(8);
  auto* title = new PlainLabel(headingOf(group), this);
  shareLetters(title, titleShare, true);
  title->setMinimumHeight(headingHeight);
  title_ = title;
  inkTitle();
  more_ = new QToolButton(this);
  more_->setAutoRaise(true);
  more_->setMinimumHeight(headingHeight);
  more_->setVisible(!moreOf(group).isEmpty());
  more_->setFocusPolicy(Qt::StrongFocus);
  pressByEnter(more_);
  controls_ << more_;
  heading_->addWidget(title);
  heading_->pushRight();
  heading_->addWidget(more_);
  rows_ = new ColumnGrid;
  column->addWidget(heading);
  column->addLayout(rows_);
  connect(more_, &QToolButton::clicked, this, [this] {
    setUnfolded(!unfolded_);
    if (unfolded_) Q_EMIT opened();
  });
  nameButton();
}

/// The table of fields is one array, so that its addresses tell the order.
void FormGroup::addField(FieldEdit* field) {
  const auto before = [](const FieldEdit* one, const FieldEdit* other) {
    return &one->spec() < &other->spec();
  };
  fields_.insert(std::upper_bound(fields_.begin(), fields_.end(), field, before), field);
}

void FormGroup::addToHeading(QWidget* control) {
  heading_->removeWidget(more_);  // it stays the last
  heading_->addWidget(control);
  heading_->addWidget(more_);
  controls_.removeOne(more_);
  controls_ << control << more_;
}

QList<QWidget*> FormGroup::stops() const {
  QList<QWidget*> all;
  for (QWidget* control : controls_)
    if (control->focusPolicy() != Qt::NoFocus) all << control;
  for (const QList<FieldEdit*>& row : shownRows_) {
    for (const FieldEdit* field : row) all << field->stop();
    for (const FieldEdit* field : row)
      for (QPushButton* button : field->answer()->buttons()) all << button;
  }
  return all;
}

void FormGroup::setUnfolded(bool unfolded) {
  if (unfolded_ == unfolded) return;
  unfolded_ = unfolded;
  nameButton();
  Q_EMIT foldingChanged();
}

void FormGroup::nameButton() {
  more_->setText(unfolded_ ? tr("− fewer fields")
                           : tr("+ %1", "more fields: their names").arg(moreOf(group_)));
  more_->setAccessibleName(unfolded_ ? tr("%1: fewer fields").arg(headingOf(group_))
                                     : tr("%1: more fields (%2)").arg(headingOf(group_), moreOf(group_)));
}

/// Why fields of a row are refused, and the lines of all fields of the row give way to it. The row that comes
/// next.
int FormGroup::addAnswers(const QList<FieldEdit*>& row, int at) {
  const bool any =
      std::any_of(row.begin(), row.end(), [](const FieldEdit* field) { return field->isRefused(); });
  for (FieldEdit* field : row) {
    field->giveWay(any);
    field->answer()->setVisible(field->isRefused());
    if (field->isRefused()) rows_->place(field->answer(), at++, 0, columns);
  }
  return at;
}

void FormGroup::arrange(const QList<FieldEdit*>& inView) {
  QList<std::pair<FieldEdit*, bool>> wanted;
  for (FieldEdit* field : inView) wanted.append({field, field->isRefused()});
  if (wanted == arranged_ && !wanted.isEmpty() && perRow_ == arrangedPerRow_) return;
  arranged_ = wanted;
  arrangedPerRow_ = perRow_;
  rows_->clear();
  for (FieldEdit* field : std::as_const(fields_)) {
    field->setVisible(inView.contains(field));
    if (!inView.contains(field)) field->answer()->hide();
  }
  int row = 0;
  int used = 0;
  shownRows_ = {{}};
  for (const auto& [field, refused] : std::as_const(arranged_)) {
    const int wide = spanOf(*field);
    if (used + wide > columns) {
      row = addAnswers(shownRows_.last(), row + 1);
      shownRows_ << QList<FieldEdit*>();
      used = 0;
    }
    rows_->place(field, row, used, wide);
    shownRows_.last() << field;
    used += wide;
  }
  addAnswers(shownRows_.last(), row + 1);
}

void FormGroup::inkTitle() {
  const Scheme scheme = schemeFor(palette());
  const bool dark = scheme == Scheme::dark || scheme == Scheme::contrastDark;
  QPalette own = title_->palette();
  own.setColor(QPalette::WindowText, boardPalette(scheme)[dark ? Ink::text : Ink::disc]);
  if (own.color(QPalette::WindowText) != title_->palette().color(QPalette::WindowText))
    title_->setPalette(own);
}

/// In a narrow form two fields share a row, or each has one of its own.
int FormGroup::spanOf(const FieldEdit& field) const {
  const int wide = field.spec().columns;
  if (perRow_ == PerRow::asInTable) return wide;
  return perRow_ == PerRow::one || wide > columns / 2 ? columns : columns / 2;
}

/// By the letters: very large ones make a wide form narrow.
void FormGroup::followWidth() {
  const int letters = width() / qMax(1, QFontInfo(font()).pixelSize());
  const PerRow now = letters < veryFewLetters ? PerRow::one
                     : letters < fewLetters   ? PerRow::two
                                              : PerRow::asInTable;
  if (now == perRow_) return;
  perRow_ = now;
  QList<FieldEdit*> inView;
  for (const auto& [field, refused] : std::as_const(arranged_)) inView << field;
  arrange(inView);
}

void FormGroup::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  followWidth();
}

void FormGroup::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) followWidth();
  if (event->type() == QEvent::PaletteChange) inkTitle();
}

void FormGroup::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintFaintRule(painter, heading_->geometry().bottom(), width(), palette());
}

}  // namespace wardchalk::ui
