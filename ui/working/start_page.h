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

  StartText* text_;
  QPushButton* example_;
  Scheme scheme_ = Scheme::light;
  double scale_ = 1;
};

}  // namespace wardchalk::ui
