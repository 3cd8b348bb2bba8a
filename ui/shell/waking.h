#pragma once

#include <QObject>

namespace wardchalk::ui {

/// Hears that the machine woke, where the system tells: logind, over the system bus. Elsewhere it says
/// nothing.
class Waking : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  /// Begins to listen; only the first time does anything.
  void listen();

 Q_SIGNALS:
  void woken();

 private Q_SLOTS:
  void prepareForSleep(bool begins);

 private:
  bool listens_ = false;
};

}  // namespace wardchalk::ui
