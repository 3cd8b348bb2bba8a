#include "tests/support/random_case.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/number/decimal_text.h"

namespace wardchalk::test {

int Choices::between(int least, int most) {
  return least + static_cast<int>(below(static_cast<std::uint32_t>(most - least + 1)));
}

std::string_view Choices::of(std::initializer_list<std::string_view> words) {
  return *(words.begin() + below(static_cast<std::uint32_t>(words.size())));
}

std::string decimal(std::int64_t digits, int decimals) {
  return exactText(Number(digits) * Number::powerOfTen(-decimals));
}

namespace {

/// Rough sizes, good enough to order something near the limit. Nothing is ever held against them.
struct Rough {
  double kg = 17.2;
  double m2 = 0.7;
  double high = 10;  // as typed
  double doses = 2;  // a day
  std::string unit = "mg";
  std::string perSize;  // "", "/kg", "/m2"
  std::string perTime = "/dose";
};

class CaseDrawer {
 public:
  explicit CaseDrawer(Choices& choices) : choices_(choices) {}

  RandomCase drawn() {
    drawSize();
    drawReference();
    drawSchedules();
    drawOrder();
    drawMaxima();
    drawBands();
    drawStock();
    if (choices_.onceIn(4)) drawInfusion();
    drawRest();
    drawOfReference();
    return {std::move(entries_), drawRules(choices_)};
  }

  RandomCase drawnRate() {
    drawSize();
    drawRate();
    drawBands();
    drawRest();
    drawOfReference();
    return {std::move(entries_), drawRules(choices_)};
  }

 private:
  void set(std::string_view path, std::string text) {
    entries_.push_back({std::string(path), std::move(text)});
  }

  /// About `value`, with up to two decimals more than it needs, never zero.
  std::string near(double value, int extraDecimals) {
    int decimals = value >= 100 ? 0 : value >= 1 ? 1 : value >= 0.01 ? 3 : 6;
    decimals += extraDecimals;
    const std::int64_t digits = std::llround(value * std::pow(10, decimals));
    return decimal(std::max<std::int64_t>(digits, 1), decimals);
  }

  /// A height in cm that mostly suits the weight, so that the size is seldom asked about.
  int drawHeight(double kg) {
    constexpr double suits[][2] = {{2, 45}, {3.4, 50}, {9.6, 75}, {17, 104}, {29, 133}, {46, 157}, {70, 176}};
    double cm = suits[0][1];
    for (int i = 1; i < 7; ++i)
      if (kg > suits[i - 1][0])
        cm = std::lerp(suits[i - 1][1], suits[i][1],
                       (std::min(kg, suits[i][0]) - suits[i - 1][0]) / (suits[i][0] - suits[i - 1][0]));
    return static_cast<int>(cm * choices_.between(96, 104) / 100) + (choices_.onceIn(10) ? 60 : 0);
  }

  /// An age, which does not often suit the size: then it is mostly confirmed.
  void drawAge() {
    set("child.age", std::string(choices_.of({"4 year", "4 year 2 month", "9 month", "12 year", "3 week"})));
    if (!choices_.onceIn(3)) set("child.size_confirmed", "true");
    if (choices_.onceIn(3)) set("child.sex", std::string(choices_.of({"female", "male"})));
  }

  void drawSize() {
    const int tenths = choices_.between(20, 700);
    rough_.kg = tenths / 10.0;
    switch (choices_.below(6)) {
      case 3:
        set("child.weight", std::to_string(tenths * 100) + " g");
        break;
      case 4:
        set("child.weight", decimal(tenths * 22, 2) + " lb");
        break;
      case 5:
        set("child.weight",
            std::to_string(tenths * 22 / 100) + " lb " + decimal(choices_.between(1, 159), 1) + " oz");
        break;
      default:
        set("child.weight", decimal(tenths, 1) + " kg");
        break;
    }
    const int cm = drawHeight(tenths / 10.0);
    rough_.m2 = std::sqrt(cm * rough_.kg / 3600);
    switch (choices_.below(8)) {
      case 4:
        set("child.height", decimal(cm, 2) + " m");
        break;
      case 5:
        set("child.height", decimal(std::llround(cm / 0.254), 1) + " in");
        break;
      case 6:
        set("child.height", std::to_string(cm / 31) + " ft " + decimal(choices_.between(1, 119), 1) + " in");
        break;
      case 7:
        break;
      default:
        set("child.height", std::to_string(cm) + " cm");
        break;
    }
    if (choices_.onceIn(6)) set("child.bsa", near(rough_.m2 * choices_.between(90, 110) / 100, 1) + " m2");
    if (choices_.onceIn(3)) drawAge();
  }

  void drawReference() {
    rough_.unit = choices_.of({"mg", "mg", "mcg", "g", "units", "mmol"});
    rough_.perSize = choices_.of({"/kg", "/m2", ""});
    rough_.perTime = choices_.of({"/dose", "/day", "/week"});
    const int digits = choices_.between(1, 999);
    const int decimals = choices_.between(0, 2);
    rough_.high = digits / std::pow(10, decimals);
    const std::string basis = " " + rough_.unit + rough_.perSize + rough_.perTime;
    set("reference.high", decimal(digits, decimals) + basis);
    switch (choices_.below(4)) {
      case 2:
        set("reference.low", decimal(std::int64_t{digits} * choices_.between(1, 100), decimals + 2) + basis);
        break;
      case 3:
        if (choices_.onceIn(3)) set("reference.limit_only", "true");
        break;
      default:
        break;
    }
  }

  std::string schedule() {
    return std::string(
        choices_.of({"every 12 h", "every 8 h", "every 6 h", "every 24 h", "once", "2 times a day",
                     "every 4 to 6 h", "2 to 3 times a day", "weekly", "2 times a week", "every 2 day",
                     "every 5 h", "every 36 h", "5 times a day", "5 times a week"}));
  }

  static double dosesOf(std::string_view schedule) {
    if (schedule == "every 12 h" || schedule == "2 times a day") return 2;
    if (schedule == "every 8 h" || schedule == "2 to 3 times a day") return 3;
    if (schedule == "every 6 h") return 4;
    if (schedule == "every 4 to 6 h") return 6;
    if (schedule == "every 5 h" || schedule == "5 times a day") return 5;
    return 1;
  }

  void drawSchedules() {
    const std::string order = schedule();
    rough_.doses = dosesOf(order);
    if (!choices_.onceIn(20)) set("order.schedule", order);
    switch (choices_.below(4)) {
      case 0:
        set("reference.schedule", order);
        break;
      case 1:
        set("reference.schedule", schedule());
        break;
      default:
        break;
    }
    if (choices_.onceIn(8)) set("order.as_needed", "true");
    if (choices_.onceIn(8)) set("order.max_doses_per_day", std::to_string(choices_.between(1, 5)));
  }

  /// The limit in one dose, in the reference's unit, roughly.
  double roughLimit() const {
    const double size = rough_.perSize == "/kg" ? rough_.kg : rough_.perSize == "/m2" ? rough_.m2 : 1;
    return rough_.high * size / (rough_.perTime == "/day" ? rough_.doses : 1);
  }

  double portion() {
    constexpr double portions[] = {1, 0.95, 0.9, 0.97, 0.99, 0.93, 0.8, 0.5, 1.01, 1.05, 1.3, 2, 0.2, 10};
    return portions[choices_.below(14)];
  }

  void drawOrder() {
    const double aim = roughLimit() * portion();
    const int extra = choices_.between(0, 1);
    const std::string unit = " " + rough_.unit;
    doseInMl_ = false;
    switch (choices_.below(10)) {
      case 5:
        set("order.dose", near(aim / rough_.kg, extra) + unit + "/kg");
        break;
      case 6:
        set("order.dose", near(aim / rough_.m2, extra) + unit + "/m2");
        break;
      case 7:
        set("order.dose", near(aim * rough_.doses, extra) + unit + "/day");
        break;
      case 8:
        set("order.dose", near(aim * rough_.doses / rough_.kg, extra) + unit + "/kg/day");
        break;
      case 9:
        doseInMl_ = true;
        break;  // once the strength is known
      default:
        set("order.dose", near(aim, extra) + unit);
        break;
    }
    aim_ = aim;
  }

  void drawMaxima() {
    const std::string unit = " " + rough_.unit;
    const double limit = roughLimit();
    if (choices_.onceIn(4)) set("reference.max_per_dose", near(limit * portion(), 0) + unit);
    if (choices_.onceIn(4))
      set("reference.max_per_day", near(limit * rough_.doses * portion(), 0) + unit);
    else if (choices_.onceIn(6))
      set("reference.max_per_day", near(limit * rough_.doses * portion() / rough_.kg, 1) + unit + "/kg");
  }

  void drawBands() {
    if (choices_.onceIn(10))
      set("reference.age_from", std::string(choices_.of({"1 month", "2 year", "4 year", "54 month"})));
    if (choices_.onceIn(10)) set("reference.age_up_to", std::string(choices_.of({"15 year", "12 year"})));
    if (choices_.onceIn(10))
      set("reference.weight_below", std::string(choices_.of({"40 kg", "88 lb", "20000 g"})));
    if (choices_.onceIn(8)) set("reference.bsa_from", "0.5 m2");
  }

  /// A strength that makes the dose about 0.05 to 30 mL, or some tablets.
  double strength() {
    constexpr double amounts[] = {2, 1, 5, 0.5, 10, 30, 0.25, 0.05};
    return std::max(aim_ / amounts[choices_.below(8)], 0.000001);
  }

  void drawStock() {
    const double perOne = strength();
    const std::string unit = " " + rough_.unit;
    const std::uint32_t kind = doseInMl_ ? choices_.below(2) : choices_.below(4);
    if (doseInMl_) set("order.dose", near(aim_ / perOne, 1) + " mL");
    if (kind == 0) {
      set("stock.kind", "liquid");
      set("stock.strength",
          choices_.onceIn(2) ? near(perOne * 5, 1) + unit + "/5 mL" : near(perOne, 1) + unit + "/mL");
    } else if (kind == 1) {
      drawPowder(perOne);
    } else if (kind == 2) {
      set("stock.kind", "solid");
      const bool capsule = choices_.onceIn(3);
      set("stock.strength", near(perOne, 0) + unit + (capsule ? "/capsule" : "/tablet"));
      if (!capsule) set("stock.divides_into", std::string(choices_.of({"1", "2", "4"})));
    }
  }

  void drawPowder(double perOne) {
    const std::string unit = " " + rough_.unit;
    set("stock.kind", "powder");
    set("stock.content", near(perOne * 5, 1) + unit);
    switch (choices_.below(5)) {
      case 0:
        set("stock.final_volume", "5 mL");
        break;
      case 1:
        set("stock.diluent", "4.8 mL");
        set("stock.displacement", "0.2 mL");
        break;
      case 2:
        set("stock.strength", near(perOne, 1) + unit + "/mL");
        set("stock.final_volume", std::string(choices_.of({"5 mL", "5.1 mL", "6 mL"})));
        break;
      case 3:
        set("stock.final_volume", "5 mL");
        set("stock.diluent", std::string(choices_.of({"4.5 mL", "5 mL", "5.5 mL"})));
        break;
      default:
        set("stock.strength", near(perOne * 5, 1) + unit + "/5 mL");
        break;
    }
  }

  void drawInfusion() {
    const int volume = choices_.between(5, 250);
    const int minutes = choices_.between(5, 120);
    const std::string unit = " " + rough_.unit;
    set("infusion.volume", std::to_string(volume) + " mL");
    if (!choices_.onceIn(5))
      set("infusion.over",
          choices_.onceIn(3) ? decimal(minutes, 1) + " h" : std::to_string(minutes) + " min");
    if (choices_.onceIn(3))
      set("infusion.drop_factor", std::string(choices_.of({"20 drop/mL", "60 drop/mL"})));
    if (choices_.onceIn(3))
      set("reference.max_concentration", near(aim_ / volume * portion(), 1) + unit + "/mL");
    if (choices_.onceIn(5)) set("reference.min_concentration", near(aim_ / volume / 2, 1) + unit + "/mL");
    if (choices_.onceIn(4)) set("reference.min_infusion_time", "30 min");
    if (choices_.onceIn(3))
      set("reference.max_infusion_rate", near(aim_ / minutes * portion(), 1) + unit + "/min");
    else if (choices_.onceIn(4))
      set("reference.max_infusion_rate",
          near(aim_ / minutes * 60 / rough_.kg * portion(), 1) + unit + "/kg/h");
  }

  void drawRate() {
    rough_.unit = choices_.of({"mcg", "mg", "units"});
    const std::string size(choices_.of({"/kg", "", "/m2"}));
    const std::string time(choices_.of({"/min", "/h"}));
    const int high = choices_.between(1, 99) * (choices_.onceIn(4) ? 1000 : 1);
    set("reference.high", decimal(high, 1) + " " + rough_.unit + size + time);
    if (choices_.onceIn(2))
      set("reference.low",
          decimal(std::int64_t{high} * choices_.between(1, 100), 3) + " " + rough_.unit + size + time);
    const std::string orderSize(choices_.of({"/kg", ""}));
    const std::string orderTime(choices_.of({"/min", "/h"}));
    const std::int64_t ordered = std::int64_t{high} * choices_.between(1, 150);
    set("order.dose", decimal(ordered, 3) + " " + rough_.unit + orderSize + orderTime);
    drawLimitsOfRate(ordered, orderSize, orderTime);
    if (choices_.onceIn(2)) set("order.schedule", "continuous");
    if (choices_.onceIn(2)) {
      set("stock.kind", "liquid");
      set("stock.strength",
          decimal(high, 0) + " " + rough_.unit + "/" + std::string(choices_.of({"mL", "50 mL"})));
    }
  }

  /// What is stated beside a rate of so many thousandths, on its basis: mostly a little more.
  void drawLimitsOfRate(std::int64_t ordered, const std::string& size, const std::string& time) {
    const auto limit = [&](std::int64_t times) {
      const int percent = choices_.onceIn(3) ? 100 : choices_.between(95, 120);
      return decimal(ordered * times * percent, 5) + " " + rough_.unit;
    };
    if (choices_.onceIn(3)) set("reference.max_infusion_rate", limit(1) + size + time);
    if (choices_.onceIn(3)) set("reference.max_per_day", limit(time == "/h" ? 24 : 1440) + size);
    if (choices_.onceIn(4)) set("reference.max_concentration", "10 " + rough_.unit + "/mL");
    if (choices_.onceIn(4)) set("infusion.over", std::string(choices_.of({"30 min", "4 h", "23 h", "36 h"})));
    if (choices_.onceIn(4))
      set("infusion.drop_factor", std::string(choices_.of({"20 drop/mL", "60 drop/mL"})));
  }

  void drawRest() {
    if (!choices_.onceIn(4))
      set("order.route", std::string(choices_.of({"oral", "intravenous", "enteral", "intramuscular",
                                                  "subcutaneous", "rectal", "topical"})));
    if (choices_.onceIn(12)) set("reference.route", std::string(choices_.of({"oral", "intravenous"})));
    set("order.medicine", std::string(choices_.of({"Plover", "Wren", "Dunlin"})));
    if (choices_.onceIn(2)) set("reference.source", "Bench list, p. 4");
  }

  /// Seldom another medicine than the order's, for nothing is compared then.
  void drawOfReference() {
    if (choices_.onceIn(4)) set("reference.max_doses_per_day", std::to_string(choices_.between(1, 6)));
    if (!choices_.onceIn(3)) return;
    const std::string ordered = std::ranges::find(entries_, "order.medicine", &WrittenEntry::path)->text;
    set("reference.medicine", choices_.onceIn(5) ? "Siskin" : ordered);
  }

  static std::string drawRules(Choices& choices) {
    return std::string(choices.of(
        {"", "", "pounds=trade; kilogram_decimals=2; round_to=decimals", "kilogram_decimals=1",
         "bsa_decimals=none", "bsa_decimals=3; ask_below_percent=80; ask_low_percent=85",
         "bsa_formula=haycock", "pounds=trade", "volume_decimals_from_1_mL=2; round_to=decimals"}));
  }

  Choices& choices_;
  std::vector<WrittenEntry> entries_;
  Rough rough_;
  double aim_ = 0;
  bool doseInMl_ = false;
};

}  // namespace

RandomCase randomCase(Choices& choices) { return CaseDrawer(choices).drawn(); }

RandomCase randomRateCase(Choices& choices) { return CaseDrawer(choices).drawnRate(); }

}  // namespace wardchalk::test
