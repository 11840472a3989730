// A plain C++17 solve of two suspension corners, to measure the service's own against.
//
// Build: c++ -O3 -march=native -std=c++17 corner_peer.cpp -o corner_peer
// Run:   ./corner_peer [rounds] [sweeps a round]
//
// The upright's pose is five unknowns, wheel centre x and y and a small turn, its height given: Newton with an analytic Jacobian
// on the link lengths (strut: the top mount on the strut's line). 61 positions from -60 to 60 mm, from the stated position outward
// in steps of 2 mm, started from the last pose and its last change; camber and toe at each. The corners are invented.
// Prints lines `name value unit`; ns per position are the median of the rounds.

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <utility>
#include <vector>

namespace {

constexpr double Pi = 3.14159265358979323846;
constexpr double ToleranceMm = 1e-9, StepMm = 2;
constexpr int HalfSweep = 30, MostSteps = 20;

struct Vec { double x, y, z; };
Vec operator+(const Vec& a, const Vec& b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
Vec operator-(const Vec& a, const Vec& b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
Vec operator*(double s, const Vec& a) { return {s * a.x, s * a.y, s * a.z}; }
double dot(const Vec& a, const Vec& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
Vec cross(const Vec& a, const Vec& b) { return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x}; }
Vec unit(const Vec& a) { return (1 / std::sqrt(dot(a, a))) * a; }

struct Quaternion { double w, x, y, z; };

struct Matrix {
    double m[9];
    Vec operator*(const Vec& v) const {
        return {m[0] * v.x + m[1] * v.y + m[2] * v.z, m[3] * v.x + m[4] * v.y + m[5] * v.z, m[6] * v.x + m[7] * v.y + m[8] * v.z};
    }
};

Matrix matrix(const Quaternion& q) {
    const double xx = q.x * q.x, yy = q.y * q.y, zz = q.z * q.z, xy = q.x * q.y, xz = q.x * q.z, yz = q.y * q.z;
    const double wx = q.w * q.x, wy = q.w * q.y, wz = q.w * q.z;
    return {{1 - 2 * (yy + zz), 2 * (xy - wz), 2 * (xz + wy), 2 * (xy + wz), 1 - 2 * (xx + zz), 2 * (yz - wx),
             2 * (xz - wy), 2 * (yz + wx), 1 - 2 * (xx + yy)}};
}

/// The pose turned on by a small rotation vector.
Quaternion turned(const Quaternion& q, const Vec& turn) {
    const double a = 0.5 * turn.x, b = 0.5 * turn.y, c = 0.5 * turn.z;
    const Quaternion r{q.w - a * q.x - b * q.y - c * q.z, q.x + a * q.w + b * q.z - c * q.y,
                       q.y + b * q.w + c * q.x - a * q.z, q.z + c * q.w + a * q.y - b * q.x};
    const double scale = 1 / std::sqrt(r.w * r.w + r.x * r.x + r.y * r.y + r.z * r.z);
    return {scale * r.w, scale * r.x, scale * r.y, scale * r.z};
}

struct Pose { double x, y; Quaternion turn; };
struct Change { double x, y; Vec turn; };
struct Link { Vec body, arm; double length; };  // arm: from the wheel centre, in the upright at the stated position

/// `Links` links and, for a strut (3 links), its line.
template <int Links>
struct Corner {
    Vec centre, spin;
    std::array<Link, Links> links;
    Vec mount{}, sideA{}, sideB{}, foot{};

    /// Residuals and Jacobian: rows are equations, columns x, y and the turn's three.
    double equations(const Pose& pose, double travel, double (&a)[5][6]) const {
        const Matrix r = matrix(pose.turn);
        const Vec w{pose.x, pose.y, centre.z + travel};
        double worst = 0;
        const auto row = [&](int i, const Vec& direction, const Vec& moment, double residual) {
            a[i][0] = direction.x; a[i][1] = direction.y; a[i][2] = moment.x; a[i][3] = moment.y; a[i][4] = moment.z; a[i][5] = -residual;
            worst = std::max(worst, std::abs(residual));
        };
        for (int i = 0; i < Links; ++i) {
            const Vec arm = r * links[i].arm, reach = w + arm - links[i].body;
            const double length = std::sqrt(dot(reach, reach));
            const Vec direction = (1 / length) * reach;
            row(i, direction, cross(arm, direction), length - links[i].length);
        }
        if constexpr (Links == 3) {
            const Vec toMount = mount - w, toFoot = r * foot;
            for (int i = 0; i < 2; ++i) {
                const Vec side = r * (i == 0 ? sideA : sideB);
                row(3 + i, -1 * side, cross(side, toMount), dot(side, toMount - toFoot));
            }
        }
        return worst;
    }
};

/// Gauss with row exchange, in place; the answer in column 5.
bool solve(double (&a)[5][6]) {
    for (int k = 0; k < 5; ++k) {
        int pivot = k;
        for (int i = k + 1; i < 5; ++i)
            if (std::abs(a[i][k]) > std::abs(a[pivot][k])) pivot = i;
        if (a[pivot][k] == 0) return false;
        if (pivot != k) std::swap(a[pivot], a[k]);
        const double inverse = 1 / a[k][k];
        for (int i = k + 1; i < 5; ++i) {
            const double share = a[i][k] * inverse;
            for (int j = k + 1; j < 6; ++j) a[i][j] -= share * a[k][j];
        }
    }
    for (int k = 4; k >= 0; --k) {
        for (int j = k + 1; j < 5; ++j) a[k][5] -= a[k][j] * a[j][5];
        a[k][5] /= a[k][k];
    }
    return true;
}

Pose moved(const Pose& pose, const Change& change) { return {pose.x + change.x, pose.y + change.y, turned(pose.turn, change.turn)}; }

/// Newton steps taken, or -1. `change`: in, the guess; out, what the pose changed by.
template <int Links>
int closePose(const Corner<Links>& corner, double travel, Pose& pose, Change& change) {
    pose = moved(pose, change);
    double a[5][6];
    for (int steps = 0; steps < MostSteps; ++steps) {
        if (corner.equations(pose, travel, a) < ToleranceMm) return steps;
        if (!solve(a)) return -1;
        const Change more{a[0][5], a[1][5], {a[2][5], a[3][5], a[4][5]}};
        pose = moved(pose, more);
        change = {change.x + more.x, change.y + more.y, change.turn + more.turn};
    }
    return -1;
}

struct Angles { double camberDeg, toeDeg; };

Angles angles(const Vec& statedSpin, const Pose& pose) {
    const Vec spin = matrix(pose.turn) * statedSpin;
    return {-std::asin(spin.z) * 180 / Pi, std::atan2(spin.x, spin.y) * 180 / Pi};
}

struct Sweep { std::array<Angles, 2 * HalfSweep + 1> rows; long steps = 0; bool closed = true; };

template <int Links>
void run(const Corner<Links>& corner, Sweep& sweep) {
    const Pose stated{corner.centre.x, corner.centre.y, {1, 0, 0, 0}};
    for (int side = 1; side >= -1; side -= 2) {
        Pose pose = stated;
        Change change{};
        for (int i = side > 0 ? 0 : 1; i <= HalfSweep; ++i) {
            const int steps = closePose(corner, side * i * StepMm, pose, change);
            sweep.closed &= steps >= 0;
            sweep.steps += steps;
            sweep.rows[HalfSweep + side * i] = angles(corner.spin, pose);
        }
    }
}

Vec spinOf(double camberDeg, double toeDeg) {
    const double camber = camberDeg * Pi / 180, toe = toeDeg * Pi / 180;
    return {std::sin(toe) * std::cos(camber), std::cos(toe) * std::cos(camber), -std::sin(camber)};
}

Link link(const Vec& centre, const Vec& body, const Vec& joint) {
    const Vec reach = joint - body;
    return {body, joint - centre, std::sqrt(dot(reach, reach))};
}

Corner<5> wishbone() {
    const Vec w{0, 760, 310}, lower{10, 715, 180}, upper{-18, 690, 480};
    return {w, spinOf(-0.5, 0.05),
            {link(w, {150, 390, 190}, lower), link(w, {-180, 400, 180}, lower), link(w, {90, 480, 455}, upper),
             link(w, {-130, 490, 440}, upper), link(w, {-125, 370, 208}, {-130, 695, 205})}};
}

Corner<3> strut() {
    const Vec w{0, 750, 305}, lower{5, 720, 175}, top{-35, 565, 840}, foot{-5, 630, 400};
    Corner<3> corner{w, spinOf(-0.75, 0),
                     {link(w, {15, 380, 190}, lower), link(w, {-310, 390, 195}, lower), link(w, {-150, 330, 235}, {-140, 695, 225})}};
    corner.mount = top;
    corner.foot = foot - w;
    corner.sideA = unit(cross(top - foot, {1, 0, 0}));
    corner.sideB = unit(cross(top - foot, corner.sideA));
    return corner;
}

template <int Links>
void measure(const char* name, const Corner<Links>& corner, int rounds, int sweeps) {
    std::vector<double> times;
    Sweep sweep;
    volatile double kept = 0;
    for (int round = 0; round < rounds; ++round) {
        const auto start = std::chrono::steady_clock::now();
        for (int i = 0; i < sweeps; ++i) {
            sweep.steps = 0;
            run(corner, sweep);
            kept = kept + sweep.rows[i % sweep.rows.size()].camberDeg;
        }
        const std::chrono::duration<double, std::nano> taken = std::chrono::steady_clock::now() - start;
        times.push_back(taken.count() / sweeps / static_cast<double>(sweep.rows.size()));
    }
    std::sort(times.begin(), times.end());
    if (!sweep.closed) {
        std::fprintf(stderr, "%s does not close\n", name);
        std::exit(1);
    }
    std::printf("cpp.%s.position %.1f ns\n", name, times[times.size() / 2]);
    std::printf("cpp.%s.newtonSteps %.2f count\n", name, sweep.steps / static_cast<double>(sweep.rows.size()));
    std::printf("cpp.%s.camberInDroop %.10f deg\n", name, sweep.rows.front().camberDeg);
    std::printf("cpp.%s.camberInBump %.10f deg\n", name, sweep.rows.back().camberDeg);
    std::printf("cpp.%s.toeInDroop %.10f deg\n", name, sweep.rows.front().toeDeg);
    std::printf("cpp.%s.toeInBump %.10f deg\n", name, sweep.rows.back().toeDeg);
}

}  // namespace

int main(int count, char** words) {
    const int rounds = count > 1 ? std::atoi(words[1]) : 9, sweeps = count > 2 ? std::atoi(words[2]) : 5000;
    if (rounds < 1 || sweeps < 1) {
        std::fprintf(stderr, "corner_peer [rounds] [sweeps a round]\n");
        return 2;
    }
    measure("doubleWishbone", wishbone(), rounds, sweeps);
    measure("macPhersonStrut", strut(), rounds, sweeps);
}
