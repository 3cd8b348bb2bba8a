#pragma once

#include <QComboBox>
#include <QElapsedTimer>
#include <string_view>

namespace wardchalk::ui {

/// A box to choose one of a few words from, or none. The wheel never changes it. A choice from the open list
/// is made at once; walking with the keys in the closed box passes over words that are not meant, so it waits
/// for Enter.
class ChoiceBox : public QComboBox {
  Q_OBJECT

 public:
  explicit ChoiceBox(QWidget* parent = nullptr);

  void addChoice(std::string_view id, const QString& words);
  [[nodiscard]] std::string chosen() const;
  [[nodiscard]] bool isChosen() const { return currentIndex() > 0; }
  /// Chooses without telling anyone; an id that is not offered chooses nothing.
  void choose(std::string_view id);

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 Q_SIGNALS:
  void passed();  ///< another word shows, by a key in the closed box
  void made();    ///< a word was chosen from the list

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  [[nodiscard]] bool isSpaceInWords(const QKeyEvent& event) const;
  void searchOn(const QString& text);

  bool byKey_ = false;
  QElapsedTimer sinceLetter_;
};

}  // namespace wardchalk::ui
