#pragma once

#include <QScrollArea>

class QVBoxLayout;

namespace wardchalk::ui {

/// A page of rows, one beneath the other, that scrolls where it is too high. Boxes have edges as in the form,
/// and what has the keyboard has its ring and is kept in view.
class RowsPage : public QScrollArea {
  Q_OBJECT

 public:
  explicit RowsPage(QWidget* parent);
  ~RowsPage() override;

  /// Where rows are added.
  [[nodiscard]] QVBoxLayout* column() const { return column_; }
  /// After the last row.
  void finish();

  void keepInView(QWidget* now);

 private:
  QVBoxLayout* column_;
};

}  // namespace wardchalk::ui
