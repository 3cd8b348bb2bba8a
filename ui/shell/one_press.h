#pragma once

#include <QEvent>
#include <Qt>
#include <cstdint>

class QKeyEvent;
class QMouseEvent;

namespace wardchalk::ui {

/// One touch of keys, pointer, screen or pen from its beginning to its end, so that it can be kept from
/// everybody: a key with its shortcut and its release, a modifier with the keys that are pressed while it is
/// held, a button until it is let go, a finger until it is lifted.
class OnePress {
 public:
  /// Whether an event comes from a person's hand.
  [[nodiscard]] static bool isInput(QEvent::Type type);

  /// Begins with this event.
  void begin(const QEvent& event);
  /// Whether the event is a part of it. Its end is the last part; what begins anew is none.
  [[nodiscard]] bool takes(const QEvent& event);
  [[nodiscard]] bool isOver() const { return kind_ == Kind::none; }

 private:
  enum class Kind : std::uint8_t { none, key, button, finger, pen };

  [[nodiscard]] bool takesKey(const QKeyEvent& event);
  [[nodiscard]] bool takesMouse(const QMouseEvent& event);
  [[nodiscard]] bool takesUntil(const QEvent& event, QEvent::Type move, QEvent::Type end,
                                QEvent::Type cancel);

  Kind kind_ = Kind::none;
  int key_ = 0;
  bool pressSeen_ = false;
  Qt::MouseButton button_ = Qt::NoButton;
};

}  // namespace wardchalk::ui
