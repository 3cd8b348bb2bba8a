#include "ui/shell/caution_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include "ui/theme/board_palette.h"
#include "ui/working/text.h"

namespace wardchalk::ui {

CautionBar::CautionBar(const QString& rulesName, const Phrasebook& book, QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(16, 6, 16, 6);
  row->setSpacing(16);
  auto* caution = new QLabel(fromCore(say(book, PhraseId::caution)), this);
  caution->setObjectName(QStringLiteral("caution"));
  caution->setWordWrap(true);
  auto* rules = new QLabel(tr("House rules: %1").arg(rulesName), this);
  rules->setObjectName(QStringLiteral("rules-name"));
  row->addWidget(caution, 1);
  row->addWidget(rules);
}

void CautionBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(boardPalette(schemeFor(palette()))[Ink::line]);
  painter.setOpacity(0.35);
  painter.drawLine(0, 0, width(), 0);
}

}  // namespace wardchalk::ui
