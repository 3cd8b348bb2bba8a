#include "ui/board/board.h"

#include <QApplication>
#include <QScreen>
#include <QStyle>
#include <utility>

#include "core/words/phrasebook.h"
#include "ui/access/answers.h"
#include "ui/board/board_surface.h"
#include "ui/board/step_list.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

Board::Board(Shown shown, int strokeMs, QWidget* parent)
    : QWidget(parent, Qt::Window),
      story_(std::move(shown)),
      surface_(new BoardSurface(this, story_, strokeMs)),
      steps_(new StepList(this, story_)) {
  setObjectName(QStringLiteral("board"));
  giveRole(this, QAccessible::Window);
  setWindowTitle(fromCore(say(PhraseId::board_title)));
  setFocusProxy(surface_);
  connect(surface_, &BoardSurface::leaveWanted, this, &QWidget::close);
  connect(surface_, &BoardSurface::otherScreenWanted, this, &Board::toOtherScreen);
  connect(surface_, &BoardSurface::otherLengthWanted, this, &Board::tellOtherLength);
  connect(surface_, &BoardSurface::listWanted, this,
          [this] { steps_->open(surface_->place().page, surface_->look()); });
  connect(steps_, &StepList::chosen, this, [this](int page) { surface_->goTo({page, 0, false}); });
  connect(steps_, &StepList::closed, surface_, [this] { surface_->setFocus(Qt::PopupFocusReason); });
}

void Board::present(const QWidget* beside) {
  fill(otherScreen(QGuiApplication::screens(), beside->screen()));
  surface_->setFocus(Qt::OtherFocusReason);
}

void Board::fill(QScreen* target) {
  setScreen(target);
  setGeometry(target->geometry());
  showFullScreen();
  raise();
  activateWindow();
}

void Board::toOtherScreen() {
  QScreen* other = otherScreen(QGuiApplication::screens(), screen());
  if (other == screen()) return;
  showNormal();
  fill(other);
}

/// At the same question where it is told still, else at the next one that is.
void Board::tellOtherLength() {
  const int number = story_.page(surface_->place()).number;
  const bool inShort = !story_.isInShort();
  if (!story_.tellInShort(inShort)) return surface_->notice(PhraseId::board_shortIsFull);
  steps_->fill(story_);
  surface_->goTo(story_.atOrAfter(number));
  surface_->notice(inShort ? PhraseId::board_inShort : PhraseId::board_inFull);
}

void Board::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  surface_->setGeometry(rect());
}

/// Qt 6.4 tells a wish for no motion by the style's animation duration, which is then 0.
int desktopStrokeMs() {
  constexpr int usual = 250;
  return QApplication::style()->styleHint(QStyle::SH_Widget_Animation_Duration) == 0 ? 0 : usual;
}

}  // namespace wardchalk::ui
