#pragma once

#include <QComboBox>
#include <QElapsedTimer>
#include <cstdint>
#include <string_view>

namespace wardchalk::ui {

/// A box to choose one of a few words from, or none. The wheel never changes it. A choice from the open list
/// is made at once; walking with the keys in the closed box passes over words that are not meant, so it waits
/// for Enter.
class ChoiceBox : public QComboBox {
  Q_OBJECT

 public:
  /// Whether nothing may be chosen. Without, the first choice holds until another is chosen.
  enum class Empty : std::uint8_t { allowed, never };

  explicit ChoiceBox(QWidget* parent = nullptr, Empty empty = Empty::allowed);

  void addChoice(std::string_view id, const QString& words);
  [[nodiscard]] std::string chosen() const;
  [[nodiscard]] bool isChosen() const { return !chosen().empty(); }
  /// Chooses without telling anyone; an id that is not offered chooses nothing, or the first.
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
