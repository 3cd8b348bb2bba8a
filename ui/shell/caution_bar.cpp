#include "ui/shell/caution_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include "ui/theme/board_palette.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

CautionBar::CautionBar(const Phrasebook& book, QWidget* parent)
    : QWidget(parent), rules_(new QLabel(this)), second_(new QLabel(this)) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(16, 6, 16, 6);
  row->setSpacing(16);
  auto* caution = new QLabel(fromCore(say(book, PhraseId::caution_short)), this);
  caution->setObjectName(QStringLiteral("caution"));
  caution->setWordWrap(true);
  rules_->setObjectName(QStringLiteral("rules-name"));
  second_->setObjectName(QStringLiteral("second-words"));
  second_->setWordWrap(true);
  second_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  row->addWidget(caution, 3);
  row->addWidget(second_, 1);
  row->addWidget(rules_);
}

void CautionBar::setRules(const QString& name) { rules_->setText(tr("House rules: %1").arg(name)); }

void CautionBar::setSecondCheck(const QString& words) {
  second_->setText(words);
  second_->setVisible(!words.isEmpty());
}

void CautionBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(boardPalette(schemeFor(palette()))[Ink::line]);
  painter.setOpacity(0.35);
  painter.drawLine(0, 0, width(), 0);
}

}  // namespace wardchalk::ui
