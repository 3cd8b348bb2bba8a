#pragma once

#include <QAccessibleWidget>

class QComboBox;

namespace wardchalk::ui::detail {

/// A box to choose from. Its name is what its label asks, and stays; what is chosen is its value, and its
/// text where a client knows no value that is a word. Qt's own (6.4) on Linux has the choice for a name, so
/// that nobody hears what is asked.
class ChoiceAccessible : public QAccessibleWidget, public QAccessibleTextInterface {
 public:
  explicit ChoiceAccessible(QComboBox* box);

  QAccessibleInterface* child(int index) const override;
  int childCount() const override { return 1; }
  int indexOfChild(const QAccessibleInterface* child) const override;

  QString text(QAccessible::Text kind) const override;
  QAccessible::State state() const override;
  void* interface_cast(QAccessible::InterfaceType type) override;

  QStringList actionNames() const override;
  void doAction(const QString& name) override;

  void selection(int, int* start, int* end) const override { *start = *end = 0; }
  int selectionCount() const override { return 0; }
  void addSelection(int, int) override {}
  void removeSelection(int) override {}
  void setSelection(int, int, int) override {}
  int cursorPosition() const override { return 0; }
  void setCursorPosition(int) override {}

  QString text(int start, int end) const override;
  int characterCount() const override;
  QRect characterRect(int) const override { return rect(); }
  int offsetAtPoint(const QPoint&) const override { return 0; }
  void scrollToSubstring(int, int) override {}
  QString attributes(int offset, int* start, int* end) const override;

 private:
  [[nodiscard]] QComboBox& box() const;
};

}  // namespace wardchalk::ui::detail
