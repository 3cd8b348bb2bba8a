#pragma once

#include <QWidget>
#include <vector>

namespace wardchalk::ui {

/// Buttons side by side from the right, in as many rows as the width needs, so that very large letters push
/// none of them out of the window.
class ButtonRows : public QWidget {
  Q_OBJECT

 public:
  explicit ButtonRows(QWidget* parent);

  void add(QWidget* button);

  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  using Row = std::vector<QWidget*>;
  [[nodiscard]] std::vector<Row> rowsIn(int width) const;

  std::vector<QWidget*> buttons_;
};

}  // namespace wardchalk::ui
