#include "ui/shell/notice_bar.h"

#include <QHBoxLayout>
#include <QPainter>

#include "ui/access/announcer.h"
#include "ui/theme/board_palette.h"
#include "ui/theme/buttons.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/target.h"

namespace wardchalk::ui {

namespace {

constexpr int markWidth = 6;

}  // namespace

NoticeBar::NoticeBar(const char* name, QWidget* parent)
    : QWidget(parent), row_(new QHBoxLayout(this)), text_(new PlainLabel(this)) {
  setObjectName(QLatin1String(name));
  row_->setContentsMargins(16, 6, 16, 6);
  row_->setSpacing(8);
  text_->setWordWrap(true);
  QFont font = text_->font();
  font.setBold(true);
  text_->setFont(font);
  row_->addWidget(text_, 1);
  hide();
}

void NoticeBar::say(const QString& text) {
  const bool news = isHidden();
  text_->setText(text);
  setAccessibleName(text);
  setVisible(true);
  if (news) announce(*this, text);  // seconds that run down are not read out one by one
}

void NoticeBar::quiet() {
  text_->clear();
  setAccessibleName({});
  hide();
}

QString NoticeBar::said() const { return text_->text(); }

void NoticeBar::offer(const char* name, const QString& text, std::function<void()> what) {
  auto* button = roomyButton(text, name, this);
  connect(button, &QPushButton::clicked, this, [what = std::move(what)] { what(); });
  row_->addWidget(button);
}

/// A mark at the left and an edge below, so that the line is told from the form without colour.
void NoticeBar::paintEvent(QPaintEvent*) {
  const BoardPalette& inks = boardPalette(schemeFor(palette()));
  QPainter painter(this);
  painter.fillRect(rect(), inks[Ink::card]);
  painter.fillRect(QRect(0, 0, markWidth, height()), inks[Ink::text]);
  painter.fillRect(QRect(0, height() - 1, width(), 1), inks[Ink::line]);
}

}  // namespace wardchalk::ui
