#include "ui/form/form_group.h"

#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/form/field_edit.h"
#include "ui/theme/edges.h"
#include "ui/theme/plain_label.h"

namespace wardchalk::ui {

namespace {

constexpr int columns = 12;
constexpr int headingHeight = 32;
constexpr int gap = 8;

}  // namespace

FormGroup::FormGroup(FieldGroup group, QWidget* parent) : QWidget(parent), group_(group) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  heading_ = new QHBoxLayout;
  heading_->setSpacing(8);
  auto* title = new PlainLabel(headingOf(group), this);
  QFont bold = title->font();
  bold.setBold(true);
  bold.setPointSizeF(bold.pointSizeF() * 1.15);
  title->setFont(bold);
  title->setMinimumHeight(headingHeight);
  more_ = new QToolButton(this);
  more_->setAutoRaise(true);
  more_->setMinimumHeight(headingHeight);
  more_->setVisible(!moreOf(group).isEmpty());
  more_->setFocusPolicy(Qt::StrongFocus);
  heading_->addWidget(title);
  heading_->addStretch();
  heading_->addWidget(more_);
  rows_ = new QVBoxLayout;
  rows_->setSpacing(2);
  column->addLayout(heading_);
  column->addLayout(rows_);
  connect(more_, &QToolButton::clicked, this, [this] { setUnfolded(!unfolded_); });
  nameButton();
}

/// The table of fields is one array, so that its addresses tell the order.
void FormGroup::addField(FieldEdit* field) {
  const auto before = [](const FieldEdit* one, const FieldEdit* other) {
    return &one->spec() < &other->spec();
  };
  fields_.insert(std::upper_bound(fields_.begin(), fields_.end(), field, before), field);
}

void FormGroup::addToHeading(QWidget* label, QWidget* control) {
  const int at = heading_->indexOf(more_);
  heading_->insertWidget(at, control);
  if (!label) return;  // it says itself what it is, and has a frame of its own
  heading_->insertWidget(at, label);
  headingControl_ = control;
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

void FormGroup::clearRows() {
  while (QLayoutItem* row = rows_->takeAt(0)) {
    while (QLayoutItem* item = row->layout()->takeAt(0)) {
      if (!fields_.contains(item->widget())) delete item->widget();
      delete item;
    }
    delete row;
  }
}

QHBoxLayout* FormGroup::addRow() {
  auto* row = new QHBoxLayout;
  row->setSpacing(gap);
  rows_->addLayout(row);
  return row;
}

/// Leaves the columns that a row does not use empty.
void FormGroup::fillUp(QHBoxLayout* row, int unused) {
  if (unused == 0) return;
  auto* nothing = new QWidget(this);
  nothing->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  row->addWidget(nothing, unused);
}

void FormGroup::arrange(const QList<FieldEdit*>& inView) {
  QList<std::pair<FieldEdit*, int>> wanted;
  for (FieldEdit* field : inView) wanted.append({field, field->columns()});
  if (wanted == arranged_ && !wanted.isEmpty()) return;
  arranged_ = wanted;
  clearRows();
  for (FieldEdit* field : std::as_const(fields_)) field->setVisible(inView.contains(field));
  int left = 0;
  QHBoxLayout* row = nullptr;
  for (const auto& [field, width] : std::as_const(arranged_)) {
    if (width > left) {
      if (row) fillUp(row, left);
      row = addRow();
      left = columns;
    }
    row->addWidget(field, width);
    left -= width;
  }
  if (row) fillUp(row, left);
}

void FormGroup::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintFaintRule(painter, headingHeight - 1, width(), palette());
  if (headingControl_) paintEdge(painter, headingControl_->geometry(), palette());
}

}  // namespace wardchalk::ui
