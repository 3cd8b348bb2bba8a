#pragma once

#include <QWidget>

#include "ui/board/board_story.h"

class QScreen;

namespace wardchalk::ui {

class BoardSurface;
class StepList;

/// The working alone on a whole screen, for a preceptor before a room: uncovered stage by stage, never ahead
/// of the presenter. It shows a copy of the worksheet; what is typed in the window meanwhile does not reach
/// it.
class Board : public QWidget {
  Q_OBJECT

 public:
  /// `asked`: every question that the amount waits for is ticked. `strokeMs` as desktopStrokeMs() gives it,
  /// or 0.
  Board(Shown shown, int strokeMs, QWidget* parent = nullptr);

  /// Fills a screen: where there are two, the one that the window `beside` is not on.
  void present(const QWidget* beside);

  [[nodiscard]] BoardSurface* surface() const { return surface_; }
  [[nodiscard]] StepList* steps() const { return steps_; }
  [[nodiscard]] const BoardStory& story() const { return story_; }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fill(QScreen* screen);
  void toOtherScreen();
  void tellOtherLength();

  BoardStory story_;
  BoardSurface* surface_;
  StepList* steps_;
};

/// How long a stroke is drawn in: 250 ms, or not at all where the desktop asks for no motion.
[[nodiscard]] int desktopStrokeMs();

/// The first of the screens that is not `taken`, or that one if there is no other.
template <typename Screen>
[[nodiscard]] Screen* otherScreen(const QList<Screen*>& screens, Screen* taken) {
  for (Screen* screen : screens)
    if (screen != taken) return screen;
  return taken;
}

}  // namespace wardchalk::ui
