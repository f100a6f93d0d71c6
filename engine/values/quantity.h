// Quantities as types: a mass cannot be added to a speed, and a number has no unit until it is named.
//
// Each type is built by a named constructor and read back in a named unit. SI inside (kg, m, m/s, s, N, W; angles in degrees).
// Units, exact by definition [NistSp811, appendix B.8]:
//   1 lb = 0.45359237 kg, 1 ft = 0.3048 m, 1 in = 0.0254 m, 1 mi/h = 0.44704 m/s, 1 oz = 1/16 lb.
// Valid range: any finite double; what is plausible belongs to the test kind, not to the unit.
// No default value: a quantity that is not known is a std::optional, never a silent zero.
//
// Example: Mass::pounds(45).kilograms() == 20.41165665
#pragma once

#include <compare>
#include <numbers>

namespace amentum {

template <class Self>
class Quantity {
public:
    friend auto operator<=>(const Quantity&, const Quantity&) = default;
    friend Self operator+(const Quantity& a, const Quantity& b) { return make(a.si_ + b.si_); }
    friend Self operator-(const Quantity& a, const Quantity& b) { return make(a.si_ - b.si_); }
    friend Self operator*(const Quantity& a, double factor) { return make(a.si_ * factor); }
    friend Self operator*(double factor, const Quantity& a) { return make(a.si_ * factor); }
    friend Self operator/(const Quantity& a, double divisor) { return make(a.si_ / divisor); }
    friend double operator/(const Quantity& a, const Quantity& b) { return a.si_ / b.si_; }

protected:
    explicit constexpr Quantity(double si) : si_(si) {}
    double si_;

private:
    static Self make(double si) { return Self(si); }
};

class Mass : public Quantity<Mass> {
public:
    static constexpr double kilograms_per_pound = 0.45359237;
    static constexpr Mass kilograms(double x) { return Mass(x); }
    static constexpr Mass grams(double x) { return Mass(x / 1000.0); }
    static constexpr Mass pounds(double x) { return Mass(x * kilograms_per_pound); }
    static constexpr Mass ounces(double x) { return Mass(x * kilograms_per_pound / 16.0); }
    constexpr double kilograms() const { return si_; }
    constexpr double grams() const { return si_ * 1000.0; }
    constexpr double pounds() const { return si_ / kilograms_per_pound; }
    constexpr double ounces() const { return si_ / kilograms_per_pound * 16.0; }

private:
    friend class Quantity<Mass>;
    explicit constexpr Mass(double si) : Quantity(si) {}
};

class Length : public Quantity<Length> {
public:
    static constexpr double metres_per_foot = 0.3048;
    static constexpr double metres_per_inch = 0.0254;
    static constexpr Length metres(double x) { return Length(x); }
    static constexpr Length centimetres(double x) { return Length(x / 100.0); }
    static constexpr Length feet(double x) { return Length(x * metres_per_foot); }
    static constexpr Length inches(double x) { return Length(x * metres_per_inch); }
    constexpr double metres() const { return si_; }
    constexpr double centimetres() const { return si_ * 100.0; }
    constexpr double feet() const { return si_ / metres_per_foot; }
    constexpr double inches() const { return si_ / metres_per_inch; }

private:
    friend class Quantity<Length>;
    explicit constexpr Length(double si) : Quantity(si) {}
};

class Speed : public Quantity<Speed> {
public:
    static constexpr double metres_per_second_per_mph = 0.44704;
    static constexpr Speed metres_per_second(double x) { return Speed(x); }
    static constexpr Speed miles_per_hour(double x) { return Speed(x * metres_per_second_per_mph); }
    static constexpr Speed kilometres_per_hour(double x) { return Speed(x / 3.6); }
    constexpr double metres_per_second() const { return si_; }
    constexpr double miles_per_hour() const { return si_ / metres_per_second_per_mph; }

private:
    friend class Quantity<Speed>;
    explicit constexpr Speed(double si) : Quantity(si) {}
};

class Duration : public Quantity<Duration> {
public:
    static constexpr Duration seconds(double x) { return Duration(x); }
    static constexpr Duration minutes(double x) { return Duration(x * 60.0); }
    constexpr double seconds() const { return si_; }
    constexpr double minutes() const { return si_ / 60.0; }

private:
    friend class Quantity<Duration>;
    explicit constexpr Duration(double si) : Quantity(si) {}
};

// Kept in degrees: a goniometer reads whole degrees, and they must come back exactly.
class Angle : public Quantity<Angle> {
public:
    static constexpr Angle radians(double x) { return Angle(x * 180.0 / std::numbers::pi); }
    static constexpr Angle degrees(double x) { return Angle(x); }
    constexpr double radians() const { return si_ * std::numbers::pi / 180.0; }
    constexpr double degrees() const { return si_; }

private:
    friend class Quantity<Angle>;
    explicit constexpr Angle(double degrees) : Quantity(degrees) {}
};

class Force : public Quantity<Force> {
public:
    static constexpr double newtons_per_kilogram_force = 9.80665; // standard gravity, exact [NistSp811, B.8]
    static constexpr Force newtons(double x) { return Force(x); }
    constexpr double newtons() const { return si_; }

private:
    friend class Quantity<Force>;
    explicit constexpr Force(double si) : Quantity(si) {}
};

class Power : public Quantity<Power> {
public:
    static constexpr Power watts(double x) { return Power(x); }
    constexpr double watts() const { return si_; }

private:
    friend class Quantity<Power>;
    explicit constexpr Power(double si) : Quantity(si) {}
};

} // namespace amentum
