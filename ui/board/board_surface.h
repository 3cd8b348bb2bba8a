#pragma once

#include <set>

#include "core/words/phrase_id.h"
#include "ui/board/board_body.h"
#include "ui/board/board_frame.h"
#include "ui/board/board_keys.h"
#include "ui/board/board_story.h"
#include "ui/working/spoken_widget.h"

class QVariantAnimation;

namespace wardchalk::ui {

class VerdictSheet;

/// The board itself: one step as far as it is uncovered, with the facts of the case above it. It draws from
/// its story and calculates nothing. What it says aloud is what the last press uncovered; its description is
/// all that is uncovered of the step.
class BoardSurface : public SpokenWidget {
  Q_OBJECT

 public:
  /// `strokeMs`: how long the strokes of a struck pair are drawn in; 0 shows them at once. The story must
  /// outlive the surface.
  BoardSurface(QWidget* parent, const BoardStory& story, int strokeMs);

  [[nodiscard]] const BoardPlace& place() const { return place_; }
  [[nodiscard]] bool isBlank() const { return blank_; }
  [[nodiscard]] const std::set<int>& turned() const { return turned_; }
  /// The factor that the keyboard stands on; -1: none.
  [[nodiscard]] int chosen() const { return chosen_; }
  [[nodiscard]] Scheme look() const { return scheme(); }
  /// In percent of the usual size: as it was chosen, and as this page has room for.
  [[nodiscard]] int chosenSize() const { return size_; }
  [[nodiscard]] int shownSize() const { return shownSize_; }

  void act(BoardAct what);
  void goTo(const BoardPlace& place);
  /// Takes the look of the desktop again.
  void followDesktop();
  /// Says so once, in the corner of the board and aloud, until the next key.
  void notice(PhraseId what);

  // What is set out on the screen now, for the painter and for tests.
  [[nodiscard]] const BoardFrame& frame() const { return frame_; }
  [[nodiscard]] const BoardBody& body() const { return body_; }
  [[nodiscard]] const VerdictSheet* verdict() const { return verdict_; }
  /// Of the body, everything of this stage or an earlier one is shown.
  [[nodiscard]] int upToStage() const;

 Q_SIGNALS:
  void leaveWanted();
  void listWanted();
  void otherScreenWanted();
  void otherLengthWanted();

 protected:
  double layOutAt(int width) override;
  bool event(QEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;

 private:
  void forward();
  void backward();
  void enter();
  void typeDigit(int digit);
  void togglePredict();
  void choose(int direction);
  void turnChosen();
  bool turnAllBack();
  void otherLook();
  void drawStrokesIn();
  [[nodiscard]] bool maySelect() const;
  [[nodiscard]] int factorAt(const QPointF& at) const;

  /// Everything that is shown and said follows from the state again.
  void refresh();
  void layOutAll();
  [[nodiscard]] int largestWith(double leastScale, double leastRoom);
  void layOutWith(const BoardSizes& sizes);
  [[nodiscard]] BoardSizes sizesAt(int percent) const;
  void resizeBoard(int percent);
  void showVerdict();
  [[nodiscard]] BoardFrameText frameText() const;
  [[nodiscard]] QString caption() const;
  [[nodiscard]] QStringList captions() const;
  void speak();

  void paintBoard(QPainter& painter) const;
  void paintResultPlace(QPainter& painter) const;
  void paintChosen(QPainter& painter) const;
  void paintKeys(QPainter& painter) const;

  const BoardStory& story_;
  int strokeMs_;
  BoardPlace place_;
  std::set<int> turned_;
  int chosen_ = -1;
  int size_ = 100;
  int shownSize_ = 100;
  QString notice_;
  int typed_ = 0;  ///< digits of the step to go to; 0: none
  bool predict_ = false;
  bool blank_ = false;
  bool showsKeys_ = false;
  StepView turnedView_;
  BoardFrame frame_;
  BoardBody body_;
  VerdictSheet* verdict_ = nullptr;
  QVariantAnimation* stroke_;
  double strokeShare_ = 1;
};

}  // namespace wardchalk::ui
