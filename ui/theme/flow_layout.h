#pragma once

#include <QLayout>
#include <vector>

namespace wardchalk::ui {

/// Items side by side, in as many rows as the width needs: the first ones from the left, those after
/// `pushRight` from the right. Very large letters push none of them out of the window.
class FlowLayout : public QLayout {
  Q_OBJECT

 public:
  explicit FlowLayout(QWidget* parent);
  ~FlowLayout() override;

  /// What is added from now on stands at the right.
  void pushRight() { right_ = true; }

  /// What is added next stands in one row with what comes after it, wherever a row is wide enough for both.
  void tieNext() { tied_ = true; }

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return static_cast<int>(entries_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  [[nodiscard]] QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSize() const override;
  void setGeometry(const QRect& rect) override;

 private:
  struct Entry {
    QLayoutItem* item;
    bool right;
    bool tied;  ///< to the one after it
  };
  struct Placed {
    QLayoutItem* item;
    QRect rect;
  };
  [[nodiscard]] std::vector<Placed> placedIn(int width) const;
  [[nodiscard]] int wantedFrom(std::size_t first, int width) const;

  std::vector<Entry> entries_;
  bool right_ = false;  ///< of what is added next
  bool tied_ = false;
};

}  // namespace wardchalk::ui
