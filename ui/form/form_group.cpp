#include "ui/form/form_group.h"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QToolButton>

#include "ui/form/field_edit.h"
#include "ui/theme/board_palette.h"

namespace wardchalk::ui {

namespace {

constexpr int columns = 12;
constexpr int headingHeight = 32;

}  // namespace

FormGroup::FormGroup(FieldGroup group, QWidget* parent) : QWidget(parent), group_(group) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  heading_ = new QHBoxLayout;
  heading_->setSpacing(8);
  auto* title = new QLabel(headingOf(group), this);
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
  rows_ = new QGridLayout;
  rows_->setHorizontalSpacing(8);
  rows_->setVerticalSpacing(2);
  for (int i = 0; i < columns; ++i) rows_->setColumnStretch(i, 1);
  column->addLayout(heading_);
  column->addLayout(rows_);
  connect(more_, &QToolButton::clicked, this, [this] { setUnfolded(!unfolded_); });
  nameButton();
}

void FormGroup::addField(FieldEdit* field) { fields_ << field; }

void FormGroup::addToHeading(QWidget* label, QWidget* control) {
  const int at = heading_->indexOf(more_);
  heading_->insertWidget(at, control);
  heading_->insertWidget(at, label);
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

void FormGroup::arrange(const QList<FieldEdit*>& inView) {
  if (inView == arranged_ && !inView.isEmpty()) return;
  arranged_ = inView;
  for (FieldEdit* field : std::as_const(fields_)) {
    rows_->removeWidget(field);
    field->setVisible(inView.contains(field));
  }
  int row = 0;
  int at = 0;
  for (FieldEdit* field : inView) {
    const int width = field->spec().columns;
    if (at + width > columns) {
      ++row;
      at = 0;
    }
    rows_->addWidget(field, row, at, 1, width);
    at += width;
  }
}

void FormGroup::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(boardPalette(schemeFor(palette()))[Ink::line]);
  painter.setOpacity(0.35);  // a rule between papers; says nothing by itself
  painter.drawLine(0, headingHeight - 1, width(), headingHeight - 1);
}

}  // namespace wardchalk::ui
