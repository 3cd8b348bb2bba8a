#pragma once

#include <QScrollArea>

class QLayout;
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

  /// How wide what stands on the page may be.
  virtual void arrange(int /*room*/) {}
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* inside_;
  QVBoxLayout* column_;
};

/// The column of a card, with the room that a card leaves round what stands on it.
[[nodiscard]] QVBoxLayout* columnOn(QWidget* card);

/// Takes everything out of a layout and deletes it.
void empty(QLayout* layout);

}  // namespace wardchalk::ui
