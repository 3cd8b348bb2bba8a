#pragma once

#include <QWidget>
#include <functional>

class QHBoxLayout;
class QLabel;

namespace wardchalk::ui {

/// One quiet line across the window that says what holds just now, with what can be done about it. It takes
/// no room while it says nothing, and never takes the keyboard.
class NoticeBar : public QWidget {
  Q_OBJECT

 public:
  explicit NoticeBar(const char* name, QWidget* parent = nullptr);

  /// Says this; a screen reader is told without a change of focus.
  void say(const QString& text);
  void quiet();
  [[nodiscard]] QString said() const;

  /// A button at the right of the line; it stays for as long as the bar does.
  void offer(const char* name, const QString& text, std::function<void()> what);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QHBoxLayout* row_;
  QLabel* text_;
};

}  // namespace wardchalk::ui
