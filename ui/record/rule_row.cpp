#include "ui/record/rule_row.h"

#include <QEvent>
#include <QGridLayout>
#include <algorithm>

#include "ui/form/quiet_line.h"
#include "ui/record/rules_table.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/target.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr int labelWidth = 300;
constexpr int arrowWidth = 40;  // of a choice beside its words, with its edges
constexpr int exampleWidth = 420;
constexpr int leastExample = 220;
constexpr int leastLabel = 180;

/// As wide as the longest choice, so that all boxes stand in line and none cuts its words.
int widestChoice(const QFontMetrics& letters) {
  int widest = 0;
  for (const RuleSpec& spec : ruleTable())
    for (const ChoiceWord& word : spec.choices)
      widest = std::max(widest, letters.horizontalAdvance(wordsOf(word)));
  return widest + arrowWidth;
}

}  // namespace

int RuleRow::usualWidth(const QFontMetrics& letters) {
  return labelWidth + widestChoice(letters) + exampleWidth;
}

RuleRow::RuleRow(const QString& label, QWidget* box, QWidget* parent)
    : QWidget(parent),
      name_(new PlainLabel(label, this)),
      box_(box),
      example_(new QuietLine(this)),
      grid_(new QGridLayout(this)) {
  name_->setWordWrap(true);
  name_->setBuddy(box);
  box->setParent(this);
  box->setAccessibleName(label);
  box->setMinimumHeight(leastTarget);
  example_->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(12);
  grid_->setVerticalSpacing(2);
  follow();
}

/// A box is as wide as its row lets it be: what it was given in a wider one does not keep the page wide.
QSize RuleRow::minimumSizeHint() const { return {leastLabel, QWidget::minimumSizeHint().height()}; }

void RuleRow::follow() {
  const int wide = widestChoice(fontMetrics());
  const Place place = width() >= labelWidth + wide + leastExample ? Place::beside
                      : width() >= leastLabel + wide              ? Place::beneath
                                                                  : Place::stacked;
  box_->setFixedWidth(place == Place::stacked ? std::min(wide, std::max(1, width())) : wide);
  if (place == place_) return;
  place_ = place;
  const bool beside = place == Place::beside;
  const bool stacked = place == Place::stacked;
  for (QWidget* one : {static_cast<QWidget*>(name_), box_, static_cast<QWidget*>(example_)})
    grid_->removeWidget(one);
  grid_->setColumnMinimumWidth(0, beside ? labelWidth : 0);
  grid_->setColumnStretch(0, beside ? 0 : 1);
  grid_->setColumnStretch(2, beside ? 1 : 0);
  grid_->addWidget(name_, 0, 0, 1, stacked ? 2 : 1);
  grid_->addWidget(box_, stacked ? 1 : 0, stacked ? 0 : 1, 1, stacked ? 2 : 1, Qt::AlignLeft);
  if (beside)
    grid_->addWidget(example_, 0, 2);
  else
    grid_->addWidget(example_, stacked ? 2 : 1, 0, 1, 2);
}

void RuleRow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  follow();
}

void RuleRow::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) follow();
}

}  // namespace wardchalk::ui
