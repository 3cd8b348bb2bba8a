#pragma once

#include <QObject>

namespace wardchalk::ui::detail {

/// Tells assistive technology of the keyboard's new place before anything else of it. A line that the
/// keyboard comes to selects its text, and Qt (6.4) tells of that first: a reader then takes the move for one
/// of the caret, and never says which line it is.
class FocusFirst : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace wardchalk::ui::detail
