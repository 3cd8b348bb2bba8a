#pragma once

#include <QWidget>

namespace wardchalk::ui {

/// The standing caution at the bottom of the window, with the name of the house rules at its right.
class CautionBar : public QWidget {
  Q_OBJECT

 public:
  explicit CautionBar(const QString& rulesName, QWidget* parent = nullptr);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wardchalk::ui
