#pragma once

#include <QLineEdit>

class QMenu;
class QToolButton;

namespace wardchalk::ui {

/// One line of text for one whole entry, with a small arrow at its end that opens what may be written there.
/// However a text comes into it (keys, paste, drop, an input method, an assistive program), it is told once.
/// It keeps no history of its own and completes nothing; the arrow is no stop of the keyboard.
class EntryLine : public QLineEdit {
  Q_OBJECT

 public:
  explicit EntryLine(QWidget* parent);

  /// Shows another text; tells nobody. The line's own history, which could bring a child back, is emptied.
  void showText(const QString& text);
  /// A unit that a bare number is in, shown at the end of the line while there is no other; empty: none.
  void setBareUnit(const QString& unit);
  /// Whether the arrow is there.
  void offerChoices(bool offered);
  /// Whether an input method is composing.
  [[nodiscard]] bool isComposing() const { return composing_; }

 Q_SIGNALS:
  void written();    ///< the text is another, by whatever way
  void composing();  ///< an input method is composing: what stands here is not all
  void choicesWanted();
  void undoWanted();
  void redoWanted();

 protected:
  bool event(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void inputMethodEvent(QInputMethodEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] bool showsBareUnit() const;
  [[nodiscard]] int arrowWidth() const;
  void applyMargins();
  void placeArrow();

  QToolButton* arrow_;
  QString bareUnit_;
  bool composing_ = false;
};

}  // namespace wardchalk::ui
