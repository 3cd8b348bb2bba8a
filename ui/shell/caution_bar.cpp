#include "ui/shell/caution_bar.h"

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
  grid_->addWidget(caution, 0, 0);
  grid_->addWidget(rules_, 0, 2);
  setSecondCheck({});
}

void CautionBar::setRules(const QString& name) {
  constexpr int mostInLine = 40;  // letters; a longer name is broken rather than pushing the caution aside
  rules_->setWordWrap(name.size() > mostInLine);
  rules_->setText(tr("House rules: %1").arg(name));
}

void CautionBar::setSecondCheck(const QString& words) {
  constexpr int mostBeside = 60;  // letters; what differed takes a line of its own
  const bool beside = words.size() <= mostBeside;
  grid_->removeWidget(second_);
  second_->setAlignment((beside ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  if (beside)
    grid_->addWidget(second_, 0, 1);
  else
    grid_->addWidget(second_, 1, 0, 1, 3);
  second_->setText(words);
  second_->setVisible(!words.isEmpty());
}

void CautionBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintFaintRule(painter, 0, width(), palette());
}

}  // namespace wardchalk::ui
