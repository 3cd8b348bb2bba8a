#pragma once

#include <QLayout>
#include <vector>

namespace wardchalk::ui {

/// Rows of twelve columns that are equally wide whatever stands in them, so that the fields of all groups
/// stand in line. A row is as high as the highest of its widgets needs at its width.
class ColumnGrid : public QLayout {
  Q_OBJECT

 public:
  static constexpr int columns = 12;

  /// The widget belongs to the layout's own widget from then on.
  ColumnGrid() = default;
  ~ColumnGrid() override;

  /// From this column, over so many; rows are filled from the top.
  void place(QWidget* widget, int row, int column, int span);
  /// Takes every widget out of the grid; the widgets stay.
  void clear();

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return static_cast<int>(cells_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  [[nodiscard]] QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSize() const override;
  void setGeometry(const QRect& rect) override;

 private:
  struct Cell {
    QLayoutItem* item;
    int row;
    int column;
    int span;
  };
  [[nodiscard]] std::vector<QRect> placedIn(int width) const;

  std::vector<Cell> cells_;
};

}  // namespace wardchalk::ui
