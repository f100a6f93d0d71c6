// Described structs to JSON and back, and to the schema of the OpenAPI document: one walk over the members for all.
//
// Reading is strict: an unknown field, a missing one, a wrong type each give a Refusal that names the field by its path
// ("trials.0.load_lb"). A std::optional or a std::vector or a map may be left out; everything else is needed.
// Schemas follow JSON Schema 2020-12 as used by OpenAPI 3.1 [OpenApi31].
#pragma once

#include "values/refusal.h"

#include <boost/describe.hpp>
#include <boost/json.hpp>
#include <boost/mp11.hpp>

#include <cmath>
#include <limits>
#include <map>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

namespace amentum {

template <class T>
struct is_optional : std::false_type {};
template <class T>
struct is_optional<std::optional<T>> : std::true_type {};
template <class T>
struct is_vector : std::false_type {};
template <class T>
struct is_vector<std::vector<T>> : std::true_type {};
template <class T>
struct is_map : std::false_type {};
template <class T>
struct is_map<std::map<std::string, T>> : std::true_type {};
template <class T>
concept Described = boost::describe::has_describe_members<T>::value;

template <class T, class Visit>
void each_member(Visit&& visit) {
    using members =
        boost::describe::describe_members<T, boost::describe::mod_public | boost::describe::mod_inherited>;
    boost::mp11::mp_for_each<members>([&](auto member) { visit(member.name, member.pointer); });
}

// ---- writing

template <class T>
boost::json::value written(const T& x) {
    if constexpr (is_optional<T>::value) {
        return x ? written(*x) : boost::json::value(nullptr);
    } else if constexpr (is_vector<T>::value) {
        boost::json::array array;
        for (const auto& each : x)
            array.push_back(written(each));
        return array;
    } else if constexpr (is_map<T>::value) {
        boost::json::object object;
        for (const auto& [key, each] : x)
            object[key] = written(each);
        return object;
    } else if constexpr (Described<T>) {
        boost::json::object object;
        each_member<T>([&](const char* name, auto pointer) { object[name] = written(x.*pointer); });
        return object;
    } else if constexpr (std::is_same_v<T, double>) {
        return std::isfinite(x) ? boost::json::value(x) : boost::json::value(nullptr);
    } else {
        return boost::json::value(x);
    }
}

// ---- reading

Refusal refuse_type(const std::string& path, const boost::json::value& given, const char* wanted);
Refusal refuse_field(const std::string& path, const std::string& name, const std::vector<std::string>& known);
inline std::string joined_path(const std::string& path, const std::string& name) {
    return path.empty() ? name : path + "." + name;
}

template <class T>
Result<T> read_json(const boost::json::value& given, const std::string& path);

template <class T>
Result<T> read_members(const boost::json::object& given, const std::string& path) {
    std::vector<std::string> known;
    each_member<T>([&](const char* name, auto) { known.emplace_back(name); });
    for (const auto& entry : given) {
        const std::string name(entry.key());
        if (std::find(known.begin(), known.end(), name) == known.end())
            return refuse_field(path, name, known);
    }
    T read{};
    std::optional<Refusal> refused;
    each_member<T>([&](const char* name, auto pointer) {
        if (refused)
            return;
        using Member = std::remove_cvref_t<decltype(read.*pointer)>;
        const auto found = given.if_contains(name);
        const std::string field = joined_path(path, name);
        if (!found || (found->is_null() && !std::is_same_v<Member, std::string>)) {
            constexpr bool may_be_absent =
                is_optional<Member>::value || is_vector<Member>::value || is_map<Member>::value;
            if constexpr (!may_be_absent)
                refused = refuse_missing(field, "it is needed here");
            return;
        }
        auto member = read_json<Member>(*found, field);
        if (!member)
            refused = member.refusal();
        else
            read.*pointer = *std::move(member);
    });
    if (refused)
        return *refused;
    return read;
}

template <class T>
Result<T> read_json(const boost::json::value& given, const std::string& path) {
    if constexpr (is_optional<T>::value) {
        auto inner = read_json<typename T::value_type>(given, path);
        if (!inner)
            return inner.refusal();
        return T(*std::move(inner));
    } else if constexpr (is_vector<T>::value) {
        if (!given.is_array())
            return refuse_type(path, given, "a list");
        T list;
        for (std::size_t i = 0; i < given.get_array().size(); ++i) {
            auto each =
                read_json<typename T::value_type>(given.get_array()[i], joined_path(path, std::to_string(i)));
            if (!each)
                return each.refusal();
            list.push_back(*std::move(each));
        }
        return list;
    } else if constexpr (is_map<T>::value) {
        if (!given.is_object())
            return refuse_type(path, given, "named values");
        T map;
        for (const auto& entry : given.get_object()) {
            auto each = read_json<typename T::mapped_type>(entry.value(),
                                                           joined_path(path, std::string(entry.key())));
            if (!each)
                return each.refusal();
            map[std::string(entry.key())] = *std::move(each);
        }
        return map;
    } else if constexpr (Described<T>) {
        if (!given.is_object())
            return refuse_type(path, given, "named fields");
        return read_members<T>(given.get_object(), path);
    } else if constexpr (std::is_same_v<T, std::string>) {
        if (!given.is_string())
            return refuse_type(path, given, "text");
        return std::string(given.get_string());
    } else if constexpr (std::is_same_v<T, bool>) {
        if (!given.is_bool())
            return refuse_type(path, given, "yes or no (true or false)");
        return given.get_bool();
    } else if constexpr (std::is_same_v<T, int>) {
        boost::json::error_code error;
        const double number = given.is_number() ? given.to_number<double>(error) : 0.5;
        if (!given.is_number() || number != std::floor(number) || std::abs(number) > 1e9)
            return refuse_type(path, given, "a whole number");
        return static_cast<int>(number);
    } else {
        static_assert(std::is_same_v<T, double>,
                      "a described member must be text, number, whole, yes/no, list or struct");
        boost::json::error_code error;
        if (!given.is_number())
            return refuse_type(path, given, "a number");
        return given.to_number<double>(error);
    }
}

// ---- schema

template <class T>
boost::json::object schema_of() {
    if constexpr (is_optional<T>::value) {
        auto inner = schema_of<typename T::value_type>();
        if (const auto type = inner.if_contains("type");
            type && type->is_string() && type->get_string() != "object")
            inner["type"] = boost::json::array{*type, "null"};
        else
            inner = {{"anyOf", boost::json::array{inner, boost::json::object{{"type", "null"}}}}};
        return inner;
    } else if constexpr (is_vector<T>::value) {
        return {{"type", "array"}, {"items", schema_of<typename T::value_type>()}};
    } else if constexpr (is_map<T>::value) {
        return {{"type", "object"}, {"additionalProperties", schema_of<typename T::mapped_type>()}};
    } else if constexpr (Described<T>) {
        boost::json::object properties;
        boost::json::array needed;
        each_member<T>([&](const char* name, auto pointer) {
            using Member = std::remove_cvref_t<decltype(std::declval<T&>().*pointer)>;
            properties[name] = schema_of<Member>();
            if (!is_optional<Member>::value)
                needed.emplace_back(name);
        });
        return {{"type", "object"},
                {"properties", properties},
                {"required", needed},
                {"additionalProperties", false}};
    } else if constexpr (std::is_same_v<T, std::string>) {
        return {{"type", "string"}};
    } else if constexpr (std::is_same_v<T, bool>) {
        return {{"type", "boolean"}};
    } else if constexpr (std::is_same_v<T, int>) {
        return {{"type", "integer"}};
    } else {
        static_assert(std::is_same_v<T, double>);
        return {{"type", "number"}};
    }
}

} // namespace amentum
