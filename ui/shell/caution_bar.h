#pragma once

#include <QWidget>

class QGridLayout;
class QLabel;

namespace wardchalk::ui {

/// The standing caution at the bottom of the window; at its right, which house rules are in force and whether
/// a second check was done.
class CautionBar : public QWidget {
  Q_OBJECT

 public:
  explicit CautionBar(QWidget* parent);

  void setRules(const QString& name);
  /// Empty: nothing stands that could be checked.
  void setSecondCheck(const QString& words);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void arrange();

  QGridLayout* grid_;
  QLabel* caution_ = nullptr;
  QLabel* rules_;
  QLabel* second_;
};

}  // namespace wardchalk::ui
