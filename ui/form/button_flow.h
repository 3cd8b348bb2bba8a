#pragma once

#include <QWidget>
#include <vector>

namespace wardchalk::ui {

/// Buttons side by side, in as many rows as the width needs: the first ones from the left, those after
/// `pushRight` from the right. Very large letters push none of them out of the window.
class ButtonFlow : public QWidget {
  Q_OBJECT

 public:
  explicit ButtonFlow(QWidget* parent);

  void add(QWidget* widget);
  /// What is added from now on stands at the right.
  void pushRight() { right_ = widgets_.size(); }

  /// What is added next stands in one row with what comes after it, wherever a row is wide enough for both.
  void tieNext() { tied_ = widgets_.size(); }

  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  bool event(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Placed {
    QWidget* widget;
    QRect rect;
  };
  [[nodiscard]] std::vector<Placed> placedIn(int width) const;
  [[nodiscard]] int wantedFrom(std::size_t first, int width) const;
  void place();

  std::vector<QWidget*> widgets_;
  std::size_t right_ = static_cast<std::size_t>(-1);
  std::size_t tied_ = static_cast<std::size_t>(-1);  ///< the first of two that stay together
};

}  // namespace wardchalk::ui
