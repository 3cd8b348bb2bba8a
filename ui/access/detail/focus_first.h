#pragma once

#include <QObject>

class QAccessibleEvent;

namespace wardchalk::ui::detail {

/// Has assistive technology hear of the keyboard's new place before anything else of it. A line that the
/// keyboard comes to selects its text, and Qt (6.4) tells of that first: a reader then takes the move for one
/// of the caret, and never says which line it is. What is selected it asks for itself.
class FocusFirst : public QObject {
 public:
  explicit FocusFirst(QObject* parent);
  ~FocusFirst() override;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  static void pass(QAccessibleEvent* event);
};

}  // namespace wardchalk::ui::detail
