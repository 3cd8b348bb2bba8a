#include "ui/form/answer_line.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>

#include "ui/form/quiet_line.h"
#include "ui/theme/buttons.h"
#include "ui/theme/letters.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/retire.h"

namespace wardchalk::ui {

namespace {

constexpr int leastWrite = 24;  // in a line of small letters; WCAG 2.2, 2.5.8

void fitButton(QPushButton* button) {
  constexpr int air = 8;
  button->setFixedHeight(qMax(leastWrite, button->fontMetrics().height() + air));
}

}  // namespace

AnswerLine::AnswerLine(QWidget* parent)
    : QWidget(parent), text_(new QuietLine(this)), row_(new QHBoxLayout(this)) {
  row_->setContentsMargins(0, 0, 0, 0);
  row_->setSpacing(6);
  row_->addWidget(text_, 1);
}

void AnswerLine::say(const QString& text, const QStringList& writes) {
  text_->say(text, QuietLine::Tone::refused);
  if (writes == writes_) return;
  writes_ = writes;
  showButtons();
}

QString AnswerLine::said() const { return text_->said(); }

void AnswerLine::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() != QEvent::FontChange) return;
  for (QPushButton* button : std::as_const(buttons_)) {
    shareLetters(button, quietShare);
    fitButton(button);
  }
}

/// A button that is clicked ends its own line: it is retired, and not deleted in the middle of its click.
void AnswerLine::showButtons() {
  for (QPushButton* button : std::as_const(buttons_)) retire(button);
  buttons_.clear();
  for (const QString& line : std::as_const(writes_)) {
    const QString words = writes_.size() == 1 ? tr("write %1", "the safe form").arg(line) : line;
    auto* button = plainButton(withoutMnemonic(words), "", this);
    button->setObjectName(QStringLiteral("write_%1").arg(buttons_.size()));
    button->setAccessibleName(tr("write %1", "the safe form").arg(line));
    shareLetters(button, quietShare);
    fitButton(button);
    button->setFocusPolicy(Qt::TabFocus);
    connect(button, &QPushButton::clicked, this, [this, line] { Q_EMIT chosen(line); });
    row_->addWidget(button, 0, Qt::AlignTop);
    buttons_ << button;
  }
}

}  // namespace wardchalk::ui
