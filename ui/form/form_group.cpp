#include "ui/form/form_group.h"

#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/form/answer_line.h"
#include "ui/form/field_edit.h"
#include "ui/theme/edges.h"
#include "ui/theme/plain_label.h"

namespace wardchalk::ui {

namespace {

constexpr int columns = 12;
constexpr int headingHeight = 28;
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

void FormGroup::addToHeading(QWidget* control) { heading_->insertWidget(heading_->indexOf(more_), control); }

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

/// Fields and their answers stay; what only fills up goes.
void FormGroup::clearRows() {
  while (QLayoutItem* row = rows_->takeAt(0)) {
    while (QLayoutItem* item = row->layout() ? row->layout()->takeAt(0) : nullptr) {
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

/// Why fields of a row are refused, and the lines of all fields of the row give way to it.
void FormGroup::addAnswers(const QList<FieldEdit*>& row) {
  const bool any =
      std::any_of(row.begin(), row.end(), [](const FieldEdit* field) { return field->isRefused(); });
  for (FieldEdit* field : row) {
    field->giveWay(any);
    field->answer()->setVisible(field->isRefused());
    if (field->isRefused()) rows_->addWidget(field->answer());
  }
}

void FormGroup::arrange(const QList<FieldEdit*>& inView) {
  QList<std::pair<FieldEdit*, bool>> wanted;
  for (FieldEdit* field : inView) wanted.append({field, field->isRefused()});
  if (wanted == arranged_ && !wanted.isEmpty()) return;
  arranged_ = wanted;
  clearRows();
  for (FieldEdit* field : std::as_const(fields_)) {
    field->setVisible(inView.contains(field));
    if (!inView.contains(field)) field->answer()->hide();
  }
  int left = 0;
  QHBoxLayout* row = nullptr;
  QList<FieldEdit*> inRow;
  const auto endRow = [&] {
    if (row) fillUp(row, left);
    addAnswers(inRow);
    inRow.clear();
  };
  for (const auto& [field, refused] : std::as_const(arranged_)) {
    if (field->spec().columns > left) {
      endRow();
      row = addRow();
      left = columns;
    }
    row->addWidget(field, field->spec().columns);
    inRow << field;
    left -= field->spec().columns;
  }
  endRow();
}

void FormGroup::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintFaintRule(painter, headingHeight - 1, width(), palette());
}

}  // namespace wardchalk::ui
