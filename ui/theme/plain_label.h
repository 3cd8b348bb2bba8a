#pragma once

#include <QFont>
#include <QHash>
#include <QLabel>
#include <QMargins>
#include <QString>

namespace wardchalk::ui {

/// A label that shows a text as it is. A name from a file may hold markup, which an ordinary label would
/// draw, with the files that it names; and it may be one long word, which an ordinary label would let push
/// the window beyond the screen: where it wraps, this one breaks a word that no line holds.
class PlainLabel : public QLabel {
 public:
  explicit PlainLabel(QWidget* parent) : PlainLabel(QString(), parent) {}
  explicit PlainLabel(const QString& text, QWidget* parent);

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;
  /// Asked many times for one layout, answered from memory.
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  /// Heights by width, of what they were measured for.
  struct Heights {
    QString text;
    QFont font;
    QMargins around;
    bool wraps = false;
    QHash<int, int> byWidth;
  };

  [[nodiscard]] int measuredHeight(int width) const;
  [[nodiscard]] int besideText() const;
  [[nodiscard]] int narrowest() const;
  [[nodiscard]] bool breaksWordsAt(int width) const;
  [[nodiscard]] QString drawn() const;

  mutable Heights heights_;
};

/// The same text where an ampersand would name a key: on a button, on a label that leads to a box.
[[nodiscard]] QString withoutMnemonic(QString text);

}  // namespace wardchalk::ui
