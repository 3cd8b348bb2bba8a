#pragma once

#include <QAccessible>
#include <QWidget>

#include "ui/theme/board_palette.h"
#include "ui/working/metrics.h"

namespace wardchalk::ui {

/// A painted, read-only piece of text that takes the keyboard. What a screen reader says is `spoken()`, its
/// accessible name; a change of it reaches a listening client. Its height follows from its
/// width. What tells of an entry has it as its origin: a click or Enter goes there.
class SpokenWidget : public QWidget {
  Q_OBJECT

 public:
  explicit SpokenWidget(QWidget* parent, QAccessible::Role role = QAccessible::Client);

  [[nodiscard]] QString spoken() const { return accessibleName(); }

  /// Takes it out of its window: at once it says nothing more, and it is deleted when it can be.
  void end();

  void setScale(double scale);
  void setScheme(Scheme scheme);

  /// The height that everything needs at this width. The work is done once for each width and text.
  int heightAt(int width);
  [[nodiscard]] bool hasHeightForWidth() const override { return sizePolicy().hasHeightForWidth(); }
  [[nodiscard]] int heightForWidth(int width) const override;

 Q_SIGNALS:
  void originActivated(const QString& origin);

 protected:
  /// Takes a text as it is shown; blanks and marks that only its setting needs are not spoken.
  void setSpoken(const QString& shown);
  /// Lets layouts give it the height that its width asks for; the panes and the board place theirs
  /// themselves.
  void followWidth();
  /// The entry that is told of; empty: none.
  void setOrigin(const QString& path);
  /// What is shown has changed and must be laid out again.
  void forget();

  [[nodiscard]] const BoardPalette& palette() const { return boardPalette(scheme_); }
  [[nodiscard]] Scheme scheme() const { return scheme_; }
  [[nodiscard]] Metrics metricsAt(int width) const { return {static_cast<double>(width), scale_, {}, 1}; }

  /// Lays everything out for a width and says how high it is.
  virtual double layOutAt(int width) = 0;

  /// `inside`: how far from the edge, where what lies round the widget could be of the ring's own colour.
  void paintFocusRing(QPainter& painter, const QColor& colour, double inside = 0) const;
  bool event(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QString origin_;
  Scheme scheme_ = Scheme::light;
  double scale_ = 1;
  int laidOutFor_ = -1;
  int height_ = 0;
};

}  // namespace wardchalk::ui
