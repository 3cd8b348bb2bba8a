#include "ui/shell/caution_bar.h"

#include <QEvent>
#include <QFontInfo>
#include <QGridLayout>
#include <QPainter>

#include "core/words/phrasebook.h"
#include "ui/theme/edges.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

CautionBar::CautionBar(QWidget* parent)
    : QWidget(parent),
      grid_(new QGridLayout(this)),
      rules_(new PlainLabel(this)),
      second_(new PlainLabel(this)) {
  grid_->setContentsMargins(16, 6, 16, 6);
  grid_->setHorizontalSpacing(16);
  grid_->setVerticalSpacing(4);
  grid_->setColumnStretch(0, 3);
  grid_->setColumnStretch(1, 1);
  auto* caution = new PlainLabel(fromCore(say(PhraseId::caution_short)), this);
  caution->setObjectName(QStringLiteral("caution"));
  caution->setWordWrap(true);
  rules_->setObjectName(QStringLiteral("rules-name"));
  second_->setObjectName(QStringLiteral("second-words"));
  second_->setWordWrap(true);
  caution_ = caution;
  setSecondCheck({});
}

void CautionBar::setRules(const QString& name) {
  constexpr int mostInLine = 40;  // letters; a longer name is broken rather than pushing the caution aside
  rules_->setWordWrap(name.size() > mostInLine);
  rules_->setText(tr("House rules: %1").arg(name));
}

void CautionBar::setSecondCheck(const QString& words) {
  second_->setText(words);
  second_->setVisible(!words.isEmpty());
  arrange();
}

/// In a narrow window the caution has a line of its own; elsewhere what differed has one, if it is long.
void CautionBar::arrange() {
  constexpr int mostBeside = 60;   // letters
  constexpr int leastForOne = 75;  // letters of width
  const bool narrow = width() < leastForOne * QFontInfo(font()).pixelSize();
  const bool beside = second_->text().size() <= mostBeside;
  for (QLabel* label : {caution_, rules_, second_}) grid_->removeWidget(label);
  second_->setAlignment((beside && !narrow ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  grid_->addWidget(caution_, 0, 0, 1, narrow ? 3 : 1);
  grid_->addWidget(rules_, narrow ? (beside ? 1 : 2) : 0, 2);
  if (narrow)
    grid_->addWidget(second_, 1, 0, 1, beside ? 2 : 3);
  else if (beside)
    grid_->addWidget(second_, 0, 1);
  else
    grid_->addWidget(second_, 1, 0, 1, 3);
}

void CautionBar::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void CautionBar::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) arrange();
}

void CautionBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintFaintRule(painter, 0, width(), palette());
}

}  // namespace wardchalk::ui
