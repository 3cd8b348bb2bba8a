#pragma once

#include <QFrame>
#include <QPushButton>

#include "ui/theme/buttons.h"
#include "ui/theme/flow_layout.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/practice_palette.h"

namespace wardchalk::ui {

// What the pages of practice are made of: calm, generous, one thing at a time.

/// The scheme that the desktop asks for now.
[[nodiscard]] Scheme practiceScheme();

/// Letters of a widget as a share of the window's; they follow when the window is zoomed.
void setLetters(QWidget* widget, double share, bool bold = false);
/// Gives the window and all in it letters of this size, where 1 is the desktop's, and the style of practice.
/// To be called again after widgets were added.
void applyLetters(QWidget* window, double zoom);

/// Text that is broken into lines, in the ink of text or of quiet words.
[[nodiscard]] QLabel* wordsIn(QWidget* parent, const QString& text, double share = 1, bool bold = false);
[[nodiscard]] QLabel* quietWordsIn(QWidget* parent, const QString& text);
/// Gives a label the letters and the ink of quiet words.
void makeQuiet(QLabel* label);

/// A button with a name for tests, as the next of a flow.
QPushButton* addButton(FlowLayout* flow, const QString& text, const char* name);

/// The least height of what is pressed, at 100 %.
inline constexpr int practiceTarget = 36;

/// A sheet with rounded corners on the ground of practice.
class PracticeCard : public QFrame {
  Q_OBJECT

 public:
  explicit PracticeCard(QWidget* parent);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

/// The striped band: "PRACTICE: invented medicines".
class PracticeBand : public PlainLabel {
  Q_OBJECT

 public:
  PracticeBand(const QString& text, QWidget* parent);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wardchalk::ui
