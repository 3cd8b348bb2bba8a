#pragma once

#include <QByteArray>
#include <QClipboard>
#include <QObject>
#include <array>
#include <memory>

class QMimeData;

namespace wardchalk::ui {

/// What was put on the clipboard out of a case, so that it can be taken back when the case goes out of sight
/// (H52): the working, a cell of a list, text of a field; and on systems that have it, the selection that a
/// middle button pastes. What another program put there is left alone, and what was copied in practice.
class OwnClipboard : public QObject {
  Q_OBJECT

 public:
  explicit OwnClipboard(QObject* parent);

  /// Puts it on the clipboard with a mark by which it is known again, whatever the system tells of its owner.
  static void put(std::unique_ptr<QMimeData> data);

  /// Empties what is still of the case.
  void empty();

 private:
  struct Held {
    bool ofCase = false;
    QByteArray text;  ///< a digest of it: the text itself is not kept twice
  };

  void follow(QClipboard::Mode mode);
  [[nodiscard]] bool isOfCase(QClipboard::Mode mode) const;

  std::array<Held, 3> held_;  // by mode: clipboard, selection, what macOS searches for
};

}  // namespace wardchalk::ui
