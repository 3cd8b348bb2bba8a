#include "ui/shell/own_clipboard.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCryptographicHash>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QUuid>
#include <utility>

#include "ui/practice/practice_window.h"

namespace wardchalk::ui {

namespace {

constexpr const char* mark = "application/x-wardchalk";

/// One for each run, so that what another window of this program copied is as foreign as anything else.
const QByteArray& ownName() {
  static const QByteArray name = QUuid::createUuid().toByteArray();
  return name;
}

QClipboard& clipboard() { return *QGuiApplication::clipboard(); }

bool ownsMode(QClipboard::Mode mode) {
  switch (mode) {
    case QClipboard::Clipboard:
      return clipboard().ownsClipboard();
    case QClipboard::Selection:
      return clipboard().ownsSelection();
    case QClipboard::FindBuffer:
      return clipboard().ownsFindBuffer();
  }
  return false;
}

/// The text that a copy made here and now would take.
QString chosenText(const QWidget* focused) {
  if (const auto* line = qobject_cast<const QLineEdit*>(focused)) return line->selectedText();
  if (const auto* label = qobject_cast<const QLabel*>(focused)) return label->selectedText();
  if (const auto* view = qobject_cast<const QAbstractItemView*>(focused))
    return view->currentIndex().data().toString();
  return {};
}

QByteArray digestOf(const QString& text) {
  return QCryptographicHash::hash(text.toUtf8(), QCryptographicHash::Sha256);
}

bool isMarked(const QMimeData* data) {
  return data && data->hasFormat(QLatin1String(mark)) && data->data(QLatin1String(mark)) == ownName();
}

}  // namespace

OwnClipboard::OwnClipboard(QObject* parent) : QObject(parent) {
  connect(&clipboard(), &QClipboard::changed, this, &OwnClipboard::follow);
}

void OwnClipboard::put(std::unique_ptr<QMimeData> data) {
  data->setData(QLatin1String(mark), ownName());
  clipboard().setMimeData(data.release());
}

/// Not every system says whose the clipboard is. There it is ours when it is what is chosen in the widget
/// that has the keyboard. What others hold is not read otherwise: its owner may be slow to answer.
void OwnClipboard::follow(QClipboard::Mode mode) {
  Held& held = held_[static_cast<std::size_t>(mode)];
  held = {};
  const QWidget* focused = QApplication::focusWidget();
  if (focused && belongsToPractice(focused)) return;
  const QString chosen = chosenText(focused);
  const bool owns = ownsMode(mode);
  if (!owns && (chosen.isEmpty() || clipboard().text(mode) != chosen)) return;
  held = {true, digestOf(clipboard().text(mode))};
}

/// Somebody may have put something there and nobody told.
bool OwnClipboard::isOfCase(QClipboard::Mode mode) const {
  const Held& held = held_[static_cast<std::size_t>(mode)];
  if (held.ofCase && (ownsMode(mode) || digestOf(clipboard().text(mode)) == held.text)) return true;
  return mode == QClipboard::Clipboard && isMarked(clipboard().mimeData());
}

void OwnClipboard::empty() {
  for (const auto& [mode, there] : {std::pair(QClipboard::Clipboard, true),
                                    std::pair(QClipboard::Selection, clipboard().supportsSelection()),
                                    std::pair(QClipboard::FindBuffer, clipboard().supportsFindBuffer())})
    if (there && isOfCase(mode)) clipboard().clear(mode);
  held_ = {};
}

}  // namespace wardchalk::ui
