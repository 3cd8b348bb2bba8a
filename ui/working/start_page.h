#pragma once

#include <QWidget>

#include "ui/theme/board_palette.h"

class QPushButton;

namespace wardchalk::ui {

class StartText;

/// What the pane shows before anything is entered: what the program does, what to enter first, and a worked
/// example.
class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(QWidget* parent);

  void setScale(double scale);
  /// What everything on it needs at this width.
  [[nodiscard]] int heightAt(int width);
  void setScheme(Scheme scheme);
  void offerExample(bool offered);

 Q_SIGNALS:
  void exampleRequested();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void arrange();
  [[nodiscard]] int left() const { return qRound(24 * scale_); }
  [[nodiscard]] int textWidth(int width) const;
  [[nodiscard]] QSize button() const;

  StartText* text_;
  QPushButton* example_;
  Scheme scheme_ = Scheme::light;
  double scale_ = 1;
};

}  // namespace wardchalk::ui
