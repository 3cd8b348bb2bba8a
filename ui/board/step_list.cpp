#include "ui/board/step_list.h"

#include <QKeyEvent>

#include "core/words/phrasebook.h"
#include "ui/board/board_sizes.h"
#include "ui/theme/breaking_delegate.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

StepList::StepList(QWidget* parent, const BoardStory& story) : QListWidget(parent) {
  setObjectName(QStringLiteral("board-steps"));
  setAccessibleName(fromCore(say(PhraseId::board_steps)));
  fill(story);
  setWordWrap(true);
  setItemDelegate(new BreakingDelegate(this));
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  connect(this, &QListWidget::itemClicked, this, &StepList::choose);
  hide();
}

void StepList::fill(const BoardStory& story) {
  clear();
  for (const BoardPage& page : story.pages()) {
    const QString question = page.isVerdict ? fromCore(say(PhraseId::board_verdict)) : page.view.question;
    addItem(QStringLiteral("%1  %2").arg(page.number).arg(loosed(question)));
  }
}

void StepList::style(Scheme scheme) {
  const BoardPalette& board = boardPalette(scheme);
  QPalette colours = palette();
  colours.setColor(QPalette::Base, board[Ink::card]);
  colours.setColor(QPalette::Text, board[Ink::text]);
  colours.setColor(QPalette::Highlight, board[Ink::disc]);
  colours.setColor(QPalette::HighlightedText, board[Ink::onDisc]);
  setPalette(colours);
  setSpacing(4);
}

void StepList::open(int page, Scheme scheme) {
  const QSizeF screen = parentWidget()->size();
  const BoardSizes sizes(screen);
  style(scheme);
  setFont(fontOf({qRound(std::max(sizes.px(24), sizes.leastAside())), false}, {}));
  const double margin = sizes.margin();
  const int high =
      qMin(qRound(screen.height() - 2 * margin), sizeHintForRow(0) * count() + 2 * frameWidth() + 8);
  setGeometry(qRound(margin), qRound(margin), qRound(screen.width() * 0.62), high);
  setCurrentRow(page);
  show();
  raise();
  setFocus(Qt::PopupFocusReason);
}

void StepList::choose() {
  const int page = currentRow();
  close();
  if (page >= 0) Q_EMIT chosen(page);
}

void StepList::close() {
  if (isHidden()) return;
  hide();
  Q_EMIT closed();
}

void StepList::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
      return choose();
    case Qt::Key_Escape:
    case Qt::Key_L:
      return close();
    default:
      QListWidget::keyPressEvent(event);
  }
}

void StepList::focusOutEvent(QFocusEvent* event) {
  QListWidget::focusOutEvent(event);
  if (event->reason() == Qt::MouseFocusReason) close();
}

}  // namespace wardchalk::ui
