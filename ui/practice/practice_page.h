#pragma once

#include <QScrollArea>

class QLayout;
class QPushButton;
class QVBoxLayout;

namespace wardchalk::ui {

/// A page of practice that can be scrolled: a title, what stands below it, and a row of buttons at its foot.
class PracticePage : public QScrollArea {
  Q_OBJECT

 public:
  PracticePage(const char* name, QWidget* parent);

 protected:
  [[nodiscard]] QWidget* inside() const { return inside_; }
  [[nodiscard]] QVBoxLayout* column() const { return column_; }

 private:
  QWidget* inside_;
  QVBoxLayout* column_;
};

/// A row for the foot of a page, without edges of its own.
class PracticeFoot : public QWidget {
  Q_OBJECT

 public:
  explicit PracticeFoot(QWidget* parent);

  /// A button at the end of the row.
  QPushButton* add(const QString& text, const char* name);
  void add(QWidget* widget, int stretch = 0);
  void addStretch();
};

/// The column of a card, with the room that a card leaves round what stands on it.
[[nodiscard]] QVBoxLayout* columnOn(QWidget* card);

/// Takes everything out of a layout and deletes it.
void empty(QLayout* layout);

}  // namespace wardchalk::ui
